/**
 * Hardwood as it is sold: the quarter, rough from the saw, and planed on two faces, in inches as
 * printed. NHLA-type table on an importer's page; two of three pages agree; 10/4 from memory.
 */
export const thicknessRows = `
quarter | rough | planed  | known
4/4     | 1     | 13/16   | read
5/4     | 1 1/4 | 1 1/16  | read
6/4     | 1 1/2 | 1 5/16  | read
7/4     | 1 3/4 | 1 1/2   | read
8/4     | 2     | 1 3/4   | read
10/4    | 2 1/2 | 2 1/4   | memory
12/4    | 3     | 2 3/4   | read
14/4    | 3 1/2 | 3 1/4   | read
16/4    | 4     | 3 3/4   | read
`;
