// @ts-check
// Stops with a sentence where Node is too old. Every program of the house imports this first, whichever file is started; it
// depends on nothing, and uses nothing that is newer than modules themselves.

const LEAST_MAJOR = 20;
const LEAST_MINOR = 19;

/**
 * What to say to a Node of this version; empty when it is new enough.
 * @param {string} version
 */
export function sayTooOld(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major > LEAST_MAJOR || (major === LEAST_MAJOR && minor >= LEAST_MINOR)) return '';
  return `Node ${version} is too old for Tilthwright. Please install Node ${LEAST_MAJOR}.${LEAST_MINOR} or newer.`;
}

const says = sayTooOld(process.versions.node);
if (says !== '') {
  console.error(says);
  process.exit(1);
}
