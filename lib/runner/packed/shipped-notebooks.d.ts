declare module 'shipped-notebooks' {
  export const notebooks: readonly import('../../page/index.js').Notebook[];
}
