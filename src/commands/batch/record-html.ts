/** A record on paper: one HTML page without scripts, styles or pictures from elsewhere. */
import type { Sheet } from './sheet.ts';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
const inHtml = (text: string): string => text.replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);

const row = (cells: readonly string[], tag: 'td' | 'th'): string =>
  `<tr>${cells.map((one) => `<${tag}>${inHtml(one)}</${tag}>`).join('')}</tr>`;

const table = (title: string, heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  rows.length === 0
    ? ''
    : `<h2>${inHtml(title)}</h2>\n<table>\n<thead>${row(heads, 'th')}</thead>\n<tbody>\n${rows.map((one) => row(one, 'td')).join('\n')}\n</tbody>\n</table>\n`;

export function htmlOf(sheet: Sheet): string {
  const { title } = sheet;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${inHtml(title)}</title>
<style>
body { font: 11pt/1.4 sans-serif; max-width: 19cm; margin: 1cm auto; padding: 0 0.5cm; color: #000; }
h1 { font-size: 16pt; } h2 { font-size: 12pt; margin: 1em 0 0.3em; }
table { border-collapse: collapse; width: 100%; } tr { break-inside: avoid; }
th, td { border: 1px solid #888; padding: 0.2em 0.5em; text-align: left; vertical-align: top; }
.sign { margin-top: 2cm; display: flex; gap: 2cm; } .sign span { border-top: 1px solid #000; flex: 1; padding-top: 0.2em; }
@page { margin: 1.5cm; }
</style>
</head>
<body>
<h1>${inHtml(title)}</h1>
${table(
  'Batch',
  ['', ''],
  sheet.facts.map(({ label, value }) => [label, value]),
)}${table(
  'Weights',
  ['Ingredient', 'Planned', 'Taken', 'Lot of the raw material'],
  sheet.weights.map(({ name, planned, taken, lot }) => [name, planned, taken, lot]),
)}${table(
  'Times',
  ['When', 'Stage'],
  sheet.times.map(({ when, what }) => [when, what]),
)}${table(
  'Temperatures',
  ['When', 'Temperature', 'Stage'],
  sheet.temperatures.map(({ when, shown, stage }) => [when, shown, stage]),
)}${table(
  'Deviations',
  [''],
  sheet.deviations.map((one) => [one]),
)}${table(
  'Notes',
  ['When', ''],
  sheet.notes.map(({ when, text }) => [when, text]),
)}<p class="sign"><span>Date</span><span>Made by</span></p>
</body>
</html>
`;
}
