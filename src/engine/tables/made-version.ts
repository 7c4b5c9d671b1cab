// Made by scripts/tables.mjs from data/*.csv and data/versions.json. Not edited by hand, not kept in git.
export const tables = { number: 1, on: '2026-11-30', digest: 'f9b91d90' };
export const model = 1;
