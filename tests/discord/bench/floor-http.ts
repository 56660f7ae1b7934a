// The least that an endpoint for interactions can do: read, verify, parse, and give a fixed answer.
import { createPublicKey, verify } from 'node:crypto';
import { createServer } from 'node:http';

const spki = Buffer.from('302a300506032b6570032100', 'hex');
const raw = Buffer.from(process.env['DISCORD_PUBLIC_KEY'] ?? '', 'hex');
const key = createPublicKey({ key: Buffer.concat([spki, raw]), format: 'der', type: 'spki' });
const fixed = Buffer.from(
  JSON.stringify({ type: 4, data: { content: 'fixed', flags: 64, allowed_mentions: { parse: [] } } }),
);

const server = createServer((request, response) => {
  const chunks: Buffer[] = [];
  request.on('data', (chunk: Buffer) => chunks.push(chunk));
  request.on('end', () => {
    const body = Buffer.concat(chunks);
    const { 'x-signature-ed25519': signature, 'x-signature-timestamp': time } = request.headers;
    const ok = verify(
      null,
      Buffer.concat([Buffer.from(String(time)), body]),
      key,
      Buffer.from(String(signature), 'hex'),
    );
    const { type } = JSON.parse(body.toString()) as { type: number };
    response
      .writeHead(ok && type === 2 ? 200 : 401, { 'content-type': 'application/json', 'content-length': fixed.length })
      .end(fixed);
  });
});
server.listen(0, () => {
  const address = server.address();
  console.log(`port ${typeof address === 'object' ? address?.port : ''}`);
});
