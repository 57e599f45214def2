/** The part of React that the example uses: its own types are a package apart. */
declare module 'react' {
  export interface ReactElement { readonly type: unknown }
  type Child = ReactElement | string | false;
  export function createElement(
    type: string | (() => ReactElement), properties: object | null, ...children: Child[]
  ): ReactElement;
  export function useState<Value>(first: Value): [Value, (next: Value | ((before: Value) => Value)) => void];
}

declare module 'react-dom/client' {
  import type { ReactElement } from 'react';

  export function createRoot(element: Element): { render(content: ReactElement): void };
}
