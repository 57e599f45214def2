export { WhatChanged } from './what-changed.ts';
