// The gas room that a form begins with, as it is typed there: the usual one, until whoever fills it in says otherwise.

import { usual } from '#engine/scraps/usual.ts';

export const USUAL_GAS_ROOM = `${Math.round(100 * usual('vessel.gasRoomFraction').likely)} %`;
