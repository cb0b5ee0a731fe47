/**
 * Cut-thread (traditional) wood screws, inches: a public table of wood screws, read. Number 2 is
 * left out: its printed shank does not fit the series.
 */
export const cutThreadRows = `
number | shank_in | root_in
4      | 0.112    | 0.075
6      | 0.138    | 0.094
8      | 0.164    | 0.112
10     | 0.190    | 0.130
12     | 0.216    | 0.148
14     | 0.242    | 0.165
16     | 0.268    | 0.184
18     | 0.294    | 0.204
20     | 0.320    | 0.223
`;
