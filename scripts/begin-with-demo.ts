import type { Connect, Plugin } from 'vite';

/**
 * Leads whoever opens the bare address of the server to the demo: the project has no page at its top.
 *
 * @returns a plugin of Vite, for its servers
 */
export function beginWithDemo(): Plugin {
  const lead: Connect.NextHandleFunction = (request, response, next) => {
    if (request.url === '/') response.writeHead(302, { location: '/examples/' }).end();
    else next();
  };
  return {
    name: 'begin-with-demo',
    configureServer: ({ middlewares }) => void middlewares.use(lead),
    configurePreviewServer: ({ middlewares }) => void middlewares.use(lead),
  };
}
