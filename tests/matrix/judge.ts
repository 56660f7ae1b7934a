// What every message of the bot owes a room: the specification's HTML, as a client's sanitiser leaves it; a plain body
// that says the same; nobody called.
import { type DefaultTreeAdapterTypes, parseFragment, serialize } from 'parse5';
import sanitizeHtml from 'sanitize-html';
import type { Json } from './human.ts';

/**
 * sanitize-html, as clients on the web use it, with the allow-list of the client-server API, "m.room.message msgtypes",
 * v1.11 and later: tags, attributes, schemes, depth.
 */
const specified: sanitizeHtml.IOptions = {
  allowedTags: (
    'del h1 h2 h3 h4 h5 h6 blockquote p a ul ol sup sub li b i u strong em s code hr br div table thead tbody tr th ' +
    'td caption pre span img details summary'
  ).split(' '),
  allowedAttributes: {
    span: ['data-mx-bg-color', 'data-mx-color', 'data-mx-spoiler', 'data-mx-maths'],
    a: ['target', 'href'],
    img: ['width', 'height', 'alt', 'title', 'src'],
    ol: ['start'],
    code: ['class'],
    div: ['data-mx-maths'],
  },
  allowedClasses: { code: ['language-*'] },
  allowedSchemes: ['https', 'http', 'ftp', 'mailto', 'magnet'],
  allowedSchemesByTag: { img: ['mxc'] },
  allowProtocolRelative: false,
  nestingLimit: 100,
};

const canonical = (html: string): string => serialize(parseFragment(html));

type Node = DefaultTreeAdapterTypes.ChildNode;
const nodesOf = (html: string): readonly Node[] => {
  const below = (node: Node): Node[] => [node, ...('childNodes' in node ? node.childNodes.flatMap(below) : [])];
  return parseFragment(html).childNodes.flatMap(below);
};

/** What a person reads of it, a space where one block ends and the next begins. */
export const htmlText = (html: string): string =>
  nodesOf(html)
    .map((node) => ('value' in node ? node.value : ' '))
    .join('');

/** The words and figures of a text. */
const words = (text: string): ReadonlySet<string> =>
  new Set(text.replace(/\p{Cf}/gu, '').match(/[\p{L}\p{N}]+([.,:]\p{N}+)*/gu) ?? []);

/** Without the numbers and dashes that items of a plain list begin with. */
const unlisted = (text: string): string => text.replace(/^\s*(\d+\.|-)\s/gm, ' ');

/** Faults of a message's content; empty where it is as it should be. */
export function flawsOf(content: Json): readonly string[] {
  const flaws: string[] = [];
  const { msgtype, body, format, formatted_body: html, 'm.mentions': mentions } = content;
  if (!['m.text', 'm.notice', 'm.image', 'm.file'].includes(msgtype)) flaws.push(`msgtype ${msgtype}`);
  if (typeof body !== 'string' || body.trim() === '') flaws.push('no body');
  if (!mentions || mentions.room || (mentions.user_ids ?? []).length > 0) {
    flaws.push(`mentions ${JSON.stringify(mentions)}`);
  }
  if (html === undefined) return flaws;
  if (format !== 'org.matrix.custom.html') flaws.push(`format ${format}`);
  const clean = canonical(sanitizeHtml(html, specified));
  if (clean !== canonical(html)) flaws.push(`a sanitiser makes of\n${canonical(html)}\nthis\n${clean}`);
  if (msgtype === 'm.image' || msgtype === 'm.file') return flaws;
  const rich = words(htmlText(html));
  const plain = words(body);
  for (const word of rich) if (!plain.has(word)) flaws.push(`"${word}" is not in the plain body`);
  for (const word of words(unlisted(body))) if (!rich.has(word)) flaws.push(`"${word}" is not in the HTML`);
  return flaws;
}
