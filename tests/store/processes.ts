// `npm run processes:store [-- REMINDERS]`: two and four processes tell the same reminders; a JSON line for each.
import { tellBySeveral } from './processes/several.ts';
import { startServer } from './server.ts';

const reminders = Number(process.argv[2] ?? 20_000);
const server = await startServer();
try {
  for (const processes of [2, 4]) {
    const told = await tellBySeveral(await server.database(`by_${processes}`), processes, reminders);
    const ok = told.twice === 0 && told.lost === 0;
    if (!ok) process.exitCode = 1;
    console.log(JSON.stringify({ processes, ok, ...told }));
  }
} finally {
  await server.end();
}
