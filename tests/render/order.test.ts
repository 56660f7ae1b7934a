// One answer of the shed class, whole, in each format: what stands where.
import { expect, test } from 'vitest';
import type { Answer } from '../../src/index.ts';
import { renderHtml } from '../../src/render/html.ts';
import { markdown, renderMarkdown } from '../../src/render/markdown.ts';
import { pages } from '../../src/render/pages.ts';
import { renderPlain } from '../../src/render/plain.ts';
import { renderTerminal } from '../../src/render/terminal.ts';

const said: Answer = {
  command: 'check',
  title: 'Check',
  lead: 'Your lye fits: about 5.7 % of the fat keeps without alkali.',
  body: [
    { kind: 'text', text: 'You have 66 g sodium hydroxide (NaOH); 70 g would leave nothing over.' },
    {
      kind: 'table',
      caption: 'I read',
      columns: [
        { title: 'fat', align: 'left' },
        { title: 'weight', align: 'right' },
      ],
      rows: [
        ['lard', '400 g'],
        ['castor oil', '100 g'],
      ],
    },
  ],
  details: [
    {
      kind: 'table',
      caption: 'Each fat',
      columns: [
        { title: 'fat', align: 'left' },
        { title: 'weight', align: 'right' },
        { title: 'sodium hydroxide needed', align: 'right' },
      ],
      rows: [['lard, from the shed class', '400 g', '57 g']],
    },
    { kind: 'facts', rows: [{ label: 'Saponification value', value: '192 to 203 mg/g' }] },
    { kind: 'steps', steps: ['Weigh.', 'Stir.'] },
    { kind: 'list', title: 'Sources', items: ['CXS 211'] },
  ],
  assumptions: ['I took "lye" as sodium hydroxide.'],
  warnings: ['A scale of 1 g is coarse for this batch.'],
  caution: ['Goggles, gloves, long sleeves. Splashed? Say "safety".'],
  actions: [
    { label: 'details', request: 'details' },
    { label: 'post it', request: 'summary' },
  ],
  result: {},
};

test('plain: the verdict, its figures, what was taken, the caution, what else there is', () => {
  expect(renderPlain(said, { details: false })).toBe(`\
Your lye fits: about 5.7 % of the fat keeps without alkali.
You have 66 g sodium hydroxide (NaOH); 70 g would leave nothing over.

I read
fat         weight
lard         400 g
castor oil   100 g

I took "lye" as sodium hydroxide.
Mind: A scale of 1 g is coarse for this batch.

Goggles, gloves, long sleeves. Splashed? Say "safety".

→ details · post it (summary)`);
});

test('plain, with details: a table too wide for a phone becomes lines', () => {
  expect(renderPlain(said, { details: true })).toContain(`\
Say "safety".

Each fat
fat: weight · sodium hydroxide needed
lard, from the shed class: 400 g · 57 g

Saponification value: 192 to 203 mg/g

1. Weigh.
2. Stir.

Sources
- CXS 211

→ post it (summary)`);
});

test('markdown: a narrow table is aligned in a code block, the caution is set off, what to type is code', () => {
  expect(renderMarkdown(said, { details: false })).toBe(`\
**Your lye fits: about 5.7 % of the fat keeps without alkali.**
You have 66 g sodium hydroxide (NaOH); 70 g would leave nothing over.

I read
\`\`\`
fat         weight
lard         400 g
castor oil   100 g
\`\`\`

I took "lye" as sodium hydroxide.
**Mind:** A scale of 1 g is coarse for this batch.

> Goggles, gloves, long sleeves. Splashed? Say "safety".

→ \`details\` · post it \`summary\``);
});

test('html', () => {
  expect(renderHtml(said, { details: true })).toBe(
    [
      '<p><strong>Your lye fits: about 5.7 % of the fat keeps without alkali.</strong></p>',
      '<p>You have 66 g sodium hydroxide (NaOH); 70 g would leave nothing over.</p>',
      '<table><caption>I read</caption><thead><tr><th>fat</th><th>weight</th></tr></thead><tbody>',
      '<tr><td>lard</td><td>400 g</td></tr><tr><td>castor oil</td><td>100 g</td></tr></tbody></table>',
      '<p>I took &quot;lye&quot; as sodium hydroxide.</p>',
      '<p><strong>Mind:</strong> A scale of 1 g is coarse for this batch.</p>',
      '<blockquote>Goggles, gloves, long sleeves. Splashed? Say &quot;safety&quot;.</blockquote>',
      '<table><caption>Each fat</caption>',
      '<thead><tr><th>fat</th><th>weight</th><th>sodium hydroxide needed</th></tr></thead>',
      '<tbody><tr><td>lard, from the shed class</td><td>400 g</td><td>57 g</td></tr></tbody></table>',
      '<p>Saponification value: <strong>192 to 203 mg/g</strong></p>',
      '<ol><li>Weigh.</li><li>Stir.</li></ol>',
      '<p><strong>Sources</strong></p><ul><li>CXS 211</li></ul>',
      '<p>→ post it <code>summary</code></p>',
    ].join(''),
  );
});

test('terminal: no line is wider than the screen, no unit alone on the next, a table stays aligned', () => {
  for (let columns = 18; columns < 40; columns += 1) {
    const text = renderTerminal(said, { details: false, columns, colour: false });
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(columns);
    expect(text).not.toMatch(/\d\n/);
  }
  expect(renderTerminal(said, { details: false, columns: 18, colour: false })).toContain('\nlard         400 g\n');
});

const table = (rows: readonly (readonly string[])[]): Answer => ({
  ...said,
  body: [{ kind: 'table', caption: '', columns: [], rows }],
});

test('a cell that is missing keeps its place in a line', () => {
  const wide = ['coconut oil that melts at 24 °C', '', '225 g of the 750 g'];
  expect(renderPlain(table([wide]), { details: false })).toContain(
    'coconut oil that melts at 24 °C: – · 225 g of the 750 g',
  );
});

test('markdown: a cell cannot end the code block it stands in', () => {
  const text = renderMarkdown(table([['```', '5 g']]), { details: false });
  expect(text.match(/```/g)).toHaveLength(2);
});

test('pages: cut between rows, the steps counted on, the caution and the number on each', () => {
  const long: Answer = {
    ...said,
    details: [{ kind: 'steps', steps: Array.from({ length: 12 }, (_, i) => `Do part ${i + 1} slowly.`) }],
  };
  const all = pages(long, markdown, { details: true, max: 320 });
  expect(all.length).toBeGreaterThan(2);
  for (const [i, page] of all.entries()) {
    expect(page).toContain('> Goggles, gloves, long sleeves. Splashed? Say "safety".');
    expect(page.endsWith(`\n\n(${i + 1}/${all.length})`)).toBe(true);
  }
  const steps = all.join('\n').match(/^\d+\. Do part \d+ slowly\.$/gm);
  expect(steps).toEqual(Array.from({ length: 12 }, (_, i) => `${i + 1}. Do part ${i + 1} slowly.`));
});
