// @ts-check
// Adding up what the runners report. A test left out counts as failed; so does a runner that ran nothing, that
// wrote no report, or that ended badly without naming a failed test.

/** @typedef {{ passed: number, failed: number, remark: string }} Tally */

/**
 * A check that passes or fails as a whole.
 * @param {number | null} status exit code
 * @returns {Tally}
 */
export function tallyStep(status) {
  return status === 0 ? { passed: 1, failed: 0, remark: '' } : { passed: 0, failed: 1, remark: `ended with ${status}` };
}

/**
 * Vitest's JSON report. A file that could not be read counts as one failed test.
 * @param {any} report
 * @param {number | null} status
 * @returns {Tally}
 */
export function tallyVitest(report, status) {
  if (report === undefined) return NO_REPORT;
  const unread = report.testResults.filter(
    (/** @type {any} */ one) => one.status === 'failed' && one.assertionResults.length === 0,
  ).length;
  return tally({
    passed: report.numPassedTests,
    broken: report.numFailedTests + unread,
    leftOut: report.numPendingTests + report.numTodoTests,
    status,
  });
}

/**
 * Playwright's JSON report. A test that passed only at a second try counts as failed.
 * @param {any} report
 * @param {number | null} status
 * @returns {Tally}
 */
export function tallyPlaywright(report, status) {
  if (report === undefined) return NO_REPORT;
  const { expected, unexpected, flaky, skipped } = report.stats;
  return tally({ passed: expected, broken: unexpected + flaky, leftOut: skipped, status });
}

/** @type {Tally} */
const NO_REPORT = { passed: 0, failed: 1, remark: 'no report was written' };

/**
 * @param {{ passed: number, broken: number, leftOut: number, status: number | null }} of
 * @returns {Tally}
 */
function tally({ passed, broken, leftOut, status }) {
  const remarks = [];
  const failed = broken + leftOut;
  if (leftOut > 0) remarks.push(`${leftOut} left out`);
  if (passed + failed === 0) remarks.push('no test ran');
  if (failed === 0 && status !== 0) remarks.push(`ended with ${status}`);
  const silent = failed === 0 && (status !== 0 || passed === 0);
  return { passed, failed: silent ? 1 : failed, remark: remarks.join(', ') };
}
