import type { Area } from './translation.ts';

export const schema = {
} satisfies Area;
