import type { Area } from './translation.ts';

export const exchange = {
} satisfies Area;
