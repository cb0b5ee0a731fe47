/**
 * Diameters of wood screws by number (Wood Handbook Table 8-9) and of common nails (Table 8-1),
 * read second-hand.
 */
export const fastenerRows = `
kind        | size | mm
screw-shank | 4    | 2.84
screw-shank | 5    | 3.18
screw-shank | 6    | 3.51
screw-shank | 7    | 3.84
screw-shank | 8    | 4.17
screw-shank | 9    | 4.50
screw-shank | 10   | 4.83
screw-shank | 11   | 5.16
screw-shank | 12   | 5.49
screw-shank | 14   | 6.15
screw-shank | 16   | 6.81
screw-shank | 18   | 7.47
screw-shank | 20   | 8.13
screw-shank | 24   | 9.45
nail        | 6d   | 2.87
nail        | 8d   | 3.33
nail        | 10d  | 3.76
nail        | 12d  | 3.76
nail        | 16d  | 4.11
nail        | 20d  | 4.88
nail        | 30d  | 5.26
nail        | 40d  | 5.72
nail        | 50d  | 6.20
nail        | 60d  | 6.65
`;
