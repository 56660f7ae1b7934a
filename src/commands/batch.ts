import { defineKeepingCommand } from './define.ts';
import { recipeOptions } from './recipe-options.ts';

export const batch = defineKeepingCommand({
  id: 'batch',
  summary: 'Guides a batch from the scale to the cured bar, with timers, and writes its record.',
  risk: 'caustic',
  options: recipeOptions,
  examples: [
    { say: 'batch start 500 g lard, 66 g NaOH, 150 g water', about: 'begins one and gives it a lot number' },
    { say: 'batch took 66 g NaOH, lot 7B', about: 'what the scale shows, and the lot of the pack' },
    { say: 'batch list', about: 'what is open, what is closed' },
    { say: 'batch record', about: 'its record; "batch record html" to print, "batch record csv" for a spreadsheet' },
  ],
  // "Batch 12" above the lines of a recipe, "Batch: 500 g lard …", "Batch of 12 bars", "Batch size: 1.2 kg", "Batch 1.5 kg
  // oils: …", "Batch of 900 g oils": no request
  isIngredient: (text, rest) =>
    (text.trim().includes('\n') && !/^\W*(?:start|begin|new|make|of|from|note)\b/i.test(rest)) ||
    /^\s*batch\s*:\s*\d/i.test(text) ||
    /^\W*(?:is\b|about\b|(?:tonight|today|tomorrow|yesterday|this (?:time|morning|week|evening))(?:['’]s)? (?:is|was|has|will)\b|(?:of )?\d+(?:[.,]\d+)? ?(?:k?g|grams?|oz|lbs?|kilos?) (?:of )?(?:(?:total|base) )?(?:oils?|fats?)\b)/i.test(
      rest,
    ) ||
    /^\W*(?:of (?!\d+ ?(?:k?g|oz|lbs?)\b)|size|weight|total|code|number|no\.?)\b/i.test(rest) ||
    // "Batch 12 – 500 g olive", "Batch one and batch two are the same"
    /^\W*(?:\d{1,3}|one|two|three|four|[a-d])\s*(?:[-–—]\s*\d|(?:and|&|or) (?:batch )?(?:\d|one\b|two\b|three\b|[b-d]\b))/i.test(
      rest,
    ),
  // Read when somebody asks: most questions are about no batch.
  run: async (request, context, memory) => (await import('./batch/run.ts')).run(request, context, memory),
});
