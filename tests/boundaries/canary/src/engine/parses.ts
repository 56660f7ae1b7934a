import * as z from 'zod/mini';

export const schema = z.string();
