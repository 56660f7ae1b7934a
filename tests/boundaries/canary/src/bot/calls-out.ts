import { spawn } from 'node:child_process';

export const run = spawn;
