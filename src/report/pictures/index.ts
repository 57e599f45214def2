export { branchesPicture } from './branches-picture.ts';
export { PICTURE_STYLES } from './picture-styles.ts';
export { pictureText, type PictureTextOptions } from './picture-text.ts';
export { railsPicture } from './rails-picture.ts';
export { runPicture } from './run-picture.ts';
export { SVG, type Shape } from './shape.ts';
export { suppliesPicture } from './supplies-picture.ts';
