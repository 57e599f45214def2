import { escaped } from '../html.ts';
import { PICTURE_STYLES } from './picture-styles.ts';
import { shape, type Shape } from './shape.ts';

export interface PictureTextOptions {
  /** The picture is a file of its own: its styles stand in it, on a light ground. */
  readonly standalone?: boolean;
}

/** A picture as SVG text, for files and print. */
export function pictureText(picture: Shape, { standalone = false }: PictureTextOptions = {}): string {
  if (!standalone) return written(picture);
  const { tag, attributes, children: [title, description, ...rest] } = picture;
  const ground = shape('rect', { class: 'ground', width: '100%', height: '100%' });
  const styles = shape('style', {}, PICTURE_STYLES);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written({ tag, attributes, children: [title!, description!, styles, ground, ...rest] })}\n`;
}

function written(part: Shape | string): string {
  if (typeof part === 'string') return escaped(part);
  const attributes = Object.entries(part.attributes).map(([name, value]) => ` ${name}="${escaped(value)}"`).join('');
  return `<${part.tag}${attributes}>${part.children.map(written).join('')}</${part.tag}>`;
}
