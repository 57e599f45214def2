import type { Area } from './translation.ts';

export const sharing = {
} satisfies Area;
