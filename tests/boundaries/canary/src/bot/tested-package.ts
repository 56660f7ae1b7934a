import { create } from 'mathjs';

export const math = create({});
