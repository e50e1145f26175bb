/** What is said of the stack that ours and the floors write. */
export const aboutStack = { title: 'Worksheets', lang: 'en', date: '2031-05-12' };
