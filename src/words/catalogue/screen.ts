import type { Area } from './translation.ts';

export const screen = {
} satisfies Area;
