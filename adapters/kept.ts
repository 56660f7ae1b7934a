import { mayHold, openStore } from '../src/index.ts';

/** What a bot keeps in a folder: opened when somebody first keeps something, looked into where anything was kept. */
export const keptIn = (folder: string, who: string) => ({
  store: () => openStore({ folder, who }),
  peek: async () => (mayHold(folder) ? openStore({ folder, who, readOnly: true }) : null),
});
