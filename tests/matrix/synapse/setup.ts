// Before the live tests: one server for all of them, each test file with users of its own.
import type { TestProject } from 'vitest/node';
import { type Address, startSynapse } from './server.ts';

declare module 'vitest' {
  interface ProvidedContext {
    readonly synapse: Address;
  }
}

export const setup = async ({ provide }: TestProject): Promise<() => Promise<void>> => {
  const { url, secret, stop } = await startSynapse();
  provide('synapse', { url, secret });
  return stop;
};
