import type { Asked } from '../../src/index.ts';
import type { Interaction } from './wire.ts';

/** Administrator, Manage Server or Manage Messages: https://docs.discord.com/developers/topics/permissions */
const hostly = 8n | 32n | 8192n;
export const isHost = ({ member }: Interaction): boolean =>
  /^\d+$/.test(member?.permissions ?? '') && (BigInt(member?.permissions ?? '0') & hostly) !== 0n;

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
