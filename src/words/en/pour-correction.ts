// A pour corrected in the record: the question about its concentrate, and the answers it offers.

import { figure } from '../figures.ts';

export const pourCorrection = {
  howMuch: (litres: string) => `You changed the litres. How much concentrate was in the ${litres}?`,
  sameStrength: (concentrate: string) => `Keep the strength: ${concentrate} of concentrate`,
  asItIs: (concentrate: string, strength: string | undefined) =>
    `Keep the concentrate: ${concentrate}${strength === undefined ? '' : `, ${strength}`}`,
  strength: (reading: 'in' | 'to', n: number) => `1 ${reading} ${figure(n)}`,
} as const;
