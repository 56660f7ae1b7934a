/** What the adapter has to say itself, as faults: drawn like everything else. */
import type { Fault } from '../../src/index.ts';

const told = (message: string, hint = ''): Fault => ({ code: 'unclear', message, hint, candidates: [], caution: [] });

export const words = {
  textOnly: told(
    'I read text only.',
    'Type the recipe with its weights, for example: 500 g lard, 66 g NaOH, 150 g water.',
  ),
  noQuoted: told(
    'I can’t read the message that you replied to.',
    'Paste its recipe in a message of your own, for example: check 500 g lard, 66 g NaOH, 150 g water.',
  ),
  unreadable: told('I couldn’t read this, please send it again.', 'Its key never reached me.'),
  unreadableHere: told(
    'I couldn’t read a message here. If it was for me, please send it again.',
    'Its key never reached me.',
  ),
  tooMany: told(
    'That is more than I can answer: I rest from your questions for a few minutes.',
    'What you ask meanwhile I skip.',
  ),
  expired: told(
    'I no longer know what this answer was about.',
    'Paste the recipe again, or reply to its message with "check".',
  ),
  isDone: told('I did this as you first wrote it; an edit changes nothing.', 'Write it as a new message.'),
  noOffer: told('This answer offers no such next step.'),
  noVerify: told(
    'I can’t compare emoji: I am a program.',
    'Your host can compare my keys: "npm start -- matrix devices" prints them.',
  ),
} as const;

/** Said once in a room that the bot came into; one line. */
export const greeting = (prefix: string, isDirect: boolean): Fault =>
  told(
    isDirect
      ? 'Hello! Send me a soap recipe with its weights, or "help". Signs on my answers: 🔍 details, ➡️ next step, 📣 share.'
      : `Hello! I check soap recipes: "${prefix} 500 g lard, 66 g NaOH, 150 g water", or reply "${prefix} check" to one; "${prefix} help" says more. Signs on my answers: 🔍 details, ➡️ next step, 📣 share.`,
  );

/** Before an answer that changed because its question did. */
export const edited = 'Edited: this answers your message as it reads now.';
