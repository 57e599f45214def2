export * from './alternating-current.ts';
export * from './contact-rating.ts';
export * from './headroom.ts';
export * from './inrush-headroom.ts';
export * from './inrush-total.ts';
export * from './lamp-power-factor.ts';
