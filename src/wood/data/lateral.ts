/**
 * Lateral load factors K by specific gravity at 12 % MC: load N = K D^1.5 for nails, K D² for screws
 * and lag screws, D in mm. Wood Handbook Table 8-4, read second-hand.
 */
export const lateralRows = `
fastener | group    | G_from | G_to | K
nail     | hardwood | 0.33   | 0.47 | 50.04
nail     | hardwood | 0.48   | 0.56 | 69.50
nail     | hardwood | 0.57   | 0.74 | 94.52
nail     | softwood | 0.29   | 0.42 | 50.04
nail     | softwood | 0.43   | 0.47 | 62.55
nail     | softwood | 0.48   | 0.52 | 76.45
screw    | hardwood | 0.33   | 0.47 | 23.17
screw    | hardwood | 0.48   | 0.56 | 31.99
screw    | hardwood | 0.57   | 0.74 | 44.13
screw    | softwood | 0.29   | 0.42 | 23.17
screw    | softwood | 0.43   | 0.47 | 29.79
screw    | softwood | 0.48   | 0.52 | 36.40
lag      | hardwood | 0.33   | 0.47 | 26.34
lag      | hardwood | 0.48   | 0.56 | 29.51
lag      | hardwood | 0.57   | 0.74 | 34.13
lag      | softwood | 0.29   | 0.42 | 23.30
lag      | softwood | 0.43   | 0.47 | 26.34
lag      | softwood | 0.48   | 0.52 | 29.51
`;
