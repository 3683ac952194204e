export { notebook } from '../../page/sample-page.js';
