import { shape, SVG, type Shape } from './shape.ts';

/** Units to a millimetre on paper, in which every picture is drawn. */
export const PER_MM = 4;
/** Width of pictures, unless they say another: 180 mm, that of an A4 page less its margins. */
export const WIDTH = 180 * PER_MM;

interface PictureParts {
  /** Name of the picture. */
  readonly title: string;
  /** All that it shows, in words and figures. */
  readonly description: string;
  readonly width?: number;
  readonly height: number;
  readonly children: readonly Shape[];
}

/** A picture at its size on paper, with its text equivalent. */
export function picture({ title, description, width = WIDTH, height, children }: PictureParts): Shape {
  return shape(
    'svg',
    {
      xmlns: SVG, class: 'picture', viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': title,
      width: `${width / PER_MM}mm`, height: `${height / PER_MM}mm`,
    },
    shape('title', {}, title), shape('desc', {}, description), ...children,
  );
}
