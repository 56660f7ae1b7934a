// The same client with a command that does nothing.
import { Client } from 'discord.js';

const client = new Client({
  intents: 0,
  allowedMentions: { parse: [] },
  rest: { api: process.env['DISCORD_API_URL'] ?? '', version: '10' },
});
client.on('interactionCreate', (interaction) => {
  if (interaction.isChatInputCommand()) void interaction.reply({ content: 'nothing', flags: 64 });
});
await client.login(process.env['DISCORD_TOKEN'] ?? '');
