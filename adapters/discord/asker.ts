import type { Asked } from '../../src/index.ts';
import type { Interaction } from './wire.ts';

/** Bits of https://docs.discord.com/developers/topics/permissions, the lowest first. */
export const permission = {
  administrator: 3,
  manageServer: 5,
  view: 10,
  send: 11,
  manageMessages: 13,
  sendInThreads: 38,
} as const;

/** Whether a set of permissions, as Discord writes it, holds one. */
export function permits(said: string | undefined, bit: number): boolean {
  if (!/^\d+$/.test(said ?? '')) return false;
  const bits = Number(said);
  return Number.isSafeInteger(bits)
    ? Math.floor(bits / 2 ** bit) % 2 === 1
    : ((BigInt(said ?? '') >> BigInt(bit)) & 1n) === 1n;
}

export const isHost = ({ member }: Interaction): boolean =>
  permits(member?.permissions, permission.administrator) ||
  permits(member?.permissions, permission.manageServer) ||
  permits(member?.permissions, permission.manageMessages);

/** Who asks, from where, and what the core is told of both. */
export type Asker = Pick<Asked, 'place' | 'person' | 'community' | 'isHost' | 'isPrivate' | 'address' | 'later'>;

/** What is answered is for the asker's eyes alone, unless it is said otherwise. */
export const askerOf = (interaction: Interaction): Asker => {
  const { member, user, channel_id, guild_id } = interaction;
  return {
    place: channel_id ?? '',
    person: (member?.user ?? user)?.id ?? '',
    ...(guild_id === undefined ? {} : { community: guild_id }),
    isHost: guild_id === undefined || isHost(interaction),
    isPrivate: true,
    address: channel_id ?? '',
  };
};
