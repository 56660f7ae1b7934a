import { createClient } from 'matrix-js-sdk';

export const client = createClient({ baseUrl: '' });
