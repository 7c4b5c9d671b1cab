// Which texture a material is drawn with: one for its group, and one of its own for kinds that a grower tells
// apart at a glance. The textures themselves stand in hatches.tsx.

/** The texture of each group of the materials table. */
const OF_GROUP: Readonly<Record<string, string>> = {
  clippings: 'clippings',
  'soft-green': 'forks',
  'leafy-veg': 'veins',
  'fruiting-veg': 'halves',
  roots: 'roots',
  fruit: 'fruit',
  kitchen: 'trimmings',
  'hay-straw': 'basket',
  browns: 'roofs',
  compost: 'crumbs',
  manure: 'clods',
  animal: 'crosses',
};

/** Kinds within a group that a grower tells apart at a glance. */
const OF_MATERIAL: Readonly<Record<string, string>> = {
  comfrey: 'saw',
  nettle: 'saw',
  borage: 'saw',
  'legume-tops': 'pods',
  lucerne: 'pods',
  seaweed: 'ribbons',
  'coffee-grounds': 'grounds',
  'tea-leaves': 'grounds',
  'blighted-haulm': 'crosses',
  'cooked-food': 'crosses',
};

/** Texture of a material; undefined for a group that has none yet (kept whole by a test). */
export function hatchOf(material: { readonly id: string; readonly group: string }): string | undefined {
  return OF_MATERIAL[material.id] ?? OF_GROUP[material.group];
}
