// What may be done in place of what a rule stops, one sentence for each stop. The sentence that says no, and why,
// stands with the place of the rule; this one always leaves the grower something to do. Local rules come first.

/** By the id of the rule. */
export const instead: Readonly<Record<string, string>> = {
  'weedkiller-treated':
    'Leave clippings on the lawn they came from and the rest where it grew, as the label of the product says; feed from other scraps.',
  'pet-waste': 'Bag it for the household bin, or do as your local rules say.',
  'meat-fish-dairy':
    'Use the food-waste collection, or a closed heap that no animal can reach where local rules allow one.',
  'cooked-food': 'Use the food-waste collection, or what your site and local rules allow.',
  'diseased-haulm': 'Use the garden-waste collection, or do as your local plant-health rules say.',
  'raw-manure':
    'Put it in the heap, or dig it in and wait the days before harvest that the rule names, or longer where local codes ask for it.',
  'seeds-in-the-liquid':
    'Cut off the seed heads and weigh in the rest, or put the lot in a heap that gets hot or in the garden-waste collection.',
  'rhubarb-leaves': 'Put them in the heap; the stalks are food.',
  'compost-in-the-liquid': 'Spread it on the bed as it is.',
  'lime-in-the-liquid': 'Put it in the heap.',
  'dry-and-woody': 'Keep it beside the heap for the days when wet scraps come.',
  'not-in-the-liquid':
    'Leave it out of the pail, and ask your garden-waste collection or site committee where it may go.',
  'lid-tight-no-vent': 'Lay the lid on loose, fit a vent, or tie a cloth over it.',
  'gas-behind-a-tight-lid': 'Lay the lid on loose, fit a vent, or tie a cloth over it.',
  'room-gas-past-short-limit':
    'Stand it outdoors in the shade or under an open roof, or fill a smaller batch; type the room and its airing again if they were wrong.',
  'rescue-no-sugar-to-a-foul-one':
    'Wait for a second look by another nose within 24 hours, or tip it under dry leaves in the heap.',
  'rescue-never-seal': 'Cover it with a vent, a water trap, a loose lid or a cloth.',
  'foul-closed-open-it-outdoors':
    'Carry it outdoors closed, with a second person, open it upwind at arm’s length, and leave it open for an hour. If you are alone, keep people and animals away from it and come back with help.',
  'tip-nothing-of-it-on-a-bed':
    'Tip it in layers under dry leaves in a heap that may take it, away from ditches and wells.',
  'tip-animal-matter-not-into-a-food-heap':
    'Ask your local rules where it may go; a heap that feeds no food bed, closed to animals, may be one place.',
  'tip-untested-clippings-not-into-a-food-heap':
    'Keep it in a pile of its own until a bean test has cleared the clippings.',
  'strained-batch-lost': 'Layer it into the heap with dry leaves, away from ditches and wells.',
  'strained-lot-not-for-liquid':
    'Layer it into a heap that feeds no food bed, or do as your local rules ask for the lot named.',
  'bottle-made-for-drink':
    'Use a canister or a bottle that no one could take for a drink, with the tag on it, out of the reach of children.',
  'bottle-of-glass':
    'Leave it in the pail under a loose lid until gas has stopped for 3 days, or use plastic with a cap that vents.',
  'bottle-cap-turned-down':
    'Leave the cap loose or use one that vents, or leave it in the pail under a loose lid until gas has stopped for 3 days.',
  'batch-no-peg':
    'Ask the other keyholders and tie on its peg again; if nobody knows it, tip it on the heap, away from ditches and wells.',
  'batch-lost': 'Layer it into the heap with dry leaves, away from ditches and wells.',
  'batch-unknown': 'Look again and read the acidity, so that it has a state; or tip it on the heap.',
  'leaf-eaten-raw':
    'Pour on the soil at the foot of the plants, from a held batch, with the days before picking that the bed asks for.',
  'aim-too-weak': 'Aim lower, pour more often, or close the gap with compost or mulch.',
  'aim-water-too-salty': 'Thin it with rain water, or type a higher limit if the crop bears it.',
  'salt-never': 'Dilute it further, and measure the salt of the can before it is poured.',
  'bed-gets-none':
    'Water it plain and feed it with compost or mulch; or change what is set for the bed if that was wrong.',
};
