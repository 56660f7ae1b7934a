/** What is measured keeps its things in a folder of its own, not where the person who measures keeps theirs. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const folder = mkdtempSync(join(tmpdir(), 'lyeward-bench-'));
process.env['LYEWARD_DATA'] = folder;
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
