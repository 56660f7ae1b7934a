/** Discord's markdown as an independent parser reads it. */
import { parse } from 'discord-markdown-parser';

interface Mark {
  readonly type: string;
  readonly content?: string | readonly Mark[];
  readonly target?: string;
  readonly name?: string;
}
export const marksOf = (text: string): readonly Mark[] => {
  const below = (mark: Mark): Mark[] => [mark, ...(Array.isArray(mark.content) ? mark.content.flatMap(below) : [])];
  return (parse(text, 'extended') as unknown as readonly Mark[]).flatMap(below);
};
/** What a person reads of it. */
export const markdownText = (text: string): string =>
  marksOf(text)
    .map(({ content, name, type }) => (typeof content === 'string' ? content : type === 'twemoji' ? name : ''))
    .join('');
