// What an answer needs: the word `fit` and the parts of the sheet that no newcomer sees before one stands.
// Fetched in one piece as soon as the first screen is drawn, so that the first screen stays small.

export { explainFit, fit } from '#tasks/fit.ts';
export { stockKept } from '#tasks/plot/kept-out.ts';
export { KeptOutLots } from '../fill/kept-out.tsx';
export { WorkingDialog } from '../parts/working-dialog.tsx';
export { Cures } from './cures.tsx';
export { ScaleView } from './scale-view.tsx';
export { SugarWindow } from './sugar-window.tsx';
