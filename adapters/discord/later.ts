/** Whether something can be told later where an interaction comes from. */
import type { Later } from '../../src/index.ts';
import { permission, permits } from './asker.ts';
import type { Interaction } from './wire.ts';

/** Announcement, public and private threads. */
const threads: ReadonlySet<number | undefined> = new Set([10, 11, 12]);

/** An address that is no channel: the direct messages of who is told, wherever they are. */
const direct = 'direct';

const byDirect = (why: string): Later => ({ can: 'direct', address: direct, why });

/** Whether the bot may write there by itself. */
function mayWrite({ app_permissions: said, channel }: Interaction): boolean {
  const write = threads.has(channel?.type) ? permission.sendInThreads : permission.send;
  return permits(said, permission.administrator) || (permits(said, permission.view) && permits(said, write));
}

export function laterOf(interaction: Interaction): Later {
  const { guild_id: server, context, authorizing_integration_owners: owners } = interaction;
  if (server === undefined) return context === 2 ? byDirect('This is a chat among others.') : { can: 'here' };
  if (owners && owners['0'] !== server) return byDirect('I am no member of this server.');
  return mayWrite(interaction)
    ? { can: 'here', how: 'I tell you in this channel, where others read it too.' }
    : byDirect('I may not write in this channel by myself.');
}

/** Where the host has given no token there is no way to write without being asked. */
export const noWay: Later = {
  can: 'nowhere',
  why: 'This assistant can only answer: its host has given it no way to write by itself.',
};
