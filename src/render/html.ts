import type { Answer, Fault } from '../answer/types.ts';
import { drawAll, type Extent, type Format, pieces } from './pieces.ts';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
  '\n': '<br>',
  // A zero-width space, so that no client makes a mention of a name or a room somebody typed.
  '@': '@&#8203;',
};

/** Text as the client shows it letter by letter; a line end becomes `<br>`. */
const escapeHtml = (text: string): string => text.replace(/[&<>"'\n@]/g, (char) => entities[char] ?? char);

const items = (texts: readonly string[]): string => texts.map((text) => `<li>${escapeHtml(text)}</li>`).join('');
const paragraph = (html: string): string => (html === '' ? '' : `<p>${html}</p>`);
const strong = (text: string): string => (text === '' ? '' : `<strong>${escapeHtml(text)}</strong>`);

/** The HTML that the Matrix specification allows in a message (client-server API, `m.room.message` formats). */
export const html: Format = {
  gap: () => '',
  draw: {
    lead: ({ text }) => paragraph(strong(text)),
    text: ({ text }) => paragraph(escapeHtml(text)),
    facts: ({ rows }) =>
      paragraph(
        rows
          .map(({ label, value }) => (label === '' ? escapeHtml(value) : `${escapeHtml(label)}: ${strong(value)}`))
          .join('<br>'),
      ),
    table: ({ caption, columns, rows }) =>
      [
        '<table>',
        caption === '' ? '' : `<caption>${escapeHtml(caption)}</caption>`,
        columns.some(({ title }) => title !== '')
          ? `<thead><tr>${columns.map(({ title }) => `<th>${escapeHtml(title)}</th>`).join('')}</tr></thead>`
          : '',
        '<tbody>',
        ...rows.map((row) => `<tr>${row.map((cell) => `<td>${escapeHtml(cell)}</td>`).join('')}</tr>`),
        '</tbody></table>',
      ].join(''),
    steps: ({ steps, from }) => `<ol${from === 1 ? '' : ` start="${from}"`}>${items(steps)}</ol>`,
    list: ({ title, items: all }) => `${paragraph(strong(title))}<ul>${items(all)}</ul>`,
    picture: ({ alt }) => paragraph(`<em>Picture: ${escapeHtml(alt)}</em>`),
    file: ({ name, about }) => paragraph(`File ${strong(name)} ${escapeHtml(about)}`),
    assumption: ({ text }) => paragraph(escapeHtml(text)),
    warning: ({ text }) => paragraph(`<strong>Mind:</strong> ${escapeHtml(text)}`),
    caution: ({ text }) => `<blockquote>${escapeHtml(text)}</blockquote>`,
    actions: ({ actions }) =>
      paragraph(
        `→ ${actions
          .map(({ label, request }) => {
            const code = `<code>${escapeHtml(request)}</code>`;
            return label.toLowerCase() === request.toLowerCase() ? code : `${escapeHtml(label)} ${code}`;
          })
          .join(' · ')}`,
      ),
  },
};

export const renderHtml = (said: Answer | Fault, extent: Extent): string => drawAll(html, pieces(said, extent));
