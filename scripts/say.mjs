// @ts-check
// One place for what the scripts tell a person. Everything goes to stderr: the stdout of a command that
// runs after these scripts belongs to its answer alone.

/** @param {string} sentence */
export function say(sentence) {
  process.stderr.write(`${sentence}\n`);
}

/**
 * Says why nothing more can be done and ends with exit code 1.
 * @param {string} sentence
 * @returns {never}
 */
export function giveUp(sentence) {
  say(sentence);
  process.exit(1);
}
