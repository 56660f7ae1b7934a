/** Words that end the chat. */
export const isFarewell = (text: string): boolean => /^(quit|exit)$/i.test(text.trim());

/** What a person says to the chat on a line of its own, and what no recipe holds on a line of its own. */
const alone = /^(quit|exit|help|safety|details|summary|explain|start over)$/i;

/**
 * The messages in a text of many lines that came at once. A recipe is one message, empty lines and all, because half
 * a recipe is another recipe. So only two kinds of line are taken apart: those of a text in which every line begins
 * with a command, and a line that is nothing but a command without an object.
 */
export function messagesIn(text: string, commands: readonly string[]): readonly string[] {
  const lines = text.replace(/\r\n?/g, '\n').split('\n');
  const isCommand = (line: string) =>
    alone.test(line.trim()) || commands.includes(/^\s*([a-z-]+)\b/i.exec(line)?.[1]?.toLowerCase() ?? '');
  const filled = lines.filter((line) => line.trim() !== '');
  if (filled.every(isCommand)) return filled.map((line) => line.trim());

  const messages: string[] = [];
  let open: string[] = [];
  const close = () => {
    const message = open.join('\n').trim();
    if (message !== '') messages.push(message);
    open = [];
  };
  for (const line of lines) {
    if (alone.test(line.trim())) {
      close();
      messages.push(line.trim());
    } else open.push(line);
  }
  close();
  return messages;
}
