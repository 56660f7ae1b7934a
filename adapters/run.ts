// Starts an adapter: `npm start` opens the console, `npm start -- NAME` another. The only file that knows them all.
import { type Config, readConfig, usage } from './config.ts';

interface Adapter {
  /** Runs until the adapter has ended. */
  readonly start: (config: Config) => Promise<void>;
}

const adapters: Readonly<Record<string, () => Promise<Adapter>>> = {
  console: () => import('./console/start.ts'),
};

const config = readConfig(process.argv.slice(2), Object.keys(adapters));
if (config.ok) {
  const adapter = await adapters[config.value.adapter]?.();
  await adapter?.start(config.value);
} else {
  process.stderr.write(`lyeward: ${config.message}\n\n${usage}`);
  process.exitCode = 64;
}
