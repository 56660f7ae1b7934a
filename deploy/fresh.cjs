// Whether dist/ was made of the sources that lie here, and making it anew where it was not: after a pull, a start must
// not answer by the old code, nor fail on it.
const { existsSync, readFileSync, statSync } = require('node:fs');
const { join } = require('node:path');

const root = join(__dirname, '..');
const dist = join(root, 'dist');

/**
 * A folder or file and the second of its last change. Whatever brings other sources (a pull, an archive, an editor that
 * saves beside and renames) changes the folders; to look at each file would cost a question a tenth of its time.
 */
exports.lineOf = (path) => {
  const found = statSync(`${root}/${path}`, { throwIfNoEntry: false });
  return found ? `${path}\t${Math.floor(found.mtimeMs / 1000)}` : '';
};

/** What dist/ was made of, as the build writes it down. */
exports.list = join(dist, 'sources.txt');

const isFresh = () =>
  existsSync(exports.list) &&
  readFileSync(exports.list, 'latin1')
    .split('\n')
    .every((line) => line === exports.lineOf(line.slice(0, line.indexOf('\t'))));

/** Makes `program` of dist/ where it is missing or of other sources; what cannot be made anew is used as it is. */
exports.make = (program) => {
  const isThere = existsSync(join(dist, program));
  if (isThere && isFresh()) return;
  try {
    // asked for here: most starts build nothing
    const { execFileSync } = require('node:child_process');
    execFileSync(process.execPath, [join(__dirname, 'build.mjs')], { stdio: ['ignore', 2, 2] });
  } catch (error) {
    if (!isThere) throw error;
    process.stderr.write('lyeward: could not be built anew and answers by the version before. Run: npm ci\n');
  }
};
