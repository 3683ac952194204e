/** What the pages are about. */
export const indexTitle = 'Damping, question by question';
