// Starts the chat, or the adapter that is named, and builds it first where that has not been done of these sources.
import { make } from './fresh.cjs';

make('run.js');
await import(new URL('../dist/run.js', import.meta.url).href);
