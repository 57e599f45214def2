// A door of its own, so that a page loads this part only with the first document that is opened.
export { verifyHtml } from './verify-html.ts';
