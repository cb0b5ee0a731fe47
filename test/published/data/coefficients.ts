/**
 * Coefficients of change per point of moisture as printed in Wood Handbook Table 13-5, for the
 * species whose printed coefficient follows from their printed shrinkage (Table 4-3), both read.
 * Left out: the trade groups of red oak, white oak and hickory, green ash and sweet birch, whose
 * coefficients stand for more than one species; mahogany, from the imported part; and sycamore's
 * C_T, printed 0.00296 where its shrinkage of 8.4 % gives 0.00297.
 */
export const printedCoefficients = `
key                 | C_R     | C_T
alder-red           | 0.00151 | 0.00256
ash-black           | 0.00172 | 0.00274
ash-oregon          | 0.00141 | 0.00285
ash-white           | 0.00169 | 0.00274
aspen-quaking       | 0.00119 | 0.00234
basswood            | 0.00230 | 0.00330
beech-american      | 0.00190 | 0.00431
birch-paper         | 0.00219 | 0.00304
birch-yellow        | 0.00256 | 0.00338
butternut           | 0.00116 | 0.00223
cherry-black        | 0.00126 | 0.00248
chestnut-american   | 0.00116 | 0.00234
cottonwood-black    | 0.00123 | 0.00304
cottonwood-eastern  | 0.00133 | 0.00327
elm-american        | 0.00144 | 0.00338
elm-rock            | 0.00165 | 0.00285
elm-slippery        | 0.00169 | 0.00315
hackberry           | 0.00165 | 0.00315
hickory-pecan       | 0.00169 | 0.00315
honeylocust         | 0.00144 | 0.00230
locust-black        | 0.00158 | 0.00252
magnolia-southern   | 0.00187 | 0.00230
maple-bigleaf       | 0.00126 | 0.00248
maple-red           | 0.00137 | 0.00289
maple-silver        | 0.00102 | 0.00252
maple-sugar         | 0.00165 | 0.00353
oak-live            | 0.00230 | 0.00338
oak-overcup         | 0.00183 | 0.00462
sassafras           | 0.00137 | 0.00216
sweetgum            | 0.00183 | 0.00365
sycamore            | 0.00172 | -      
tupelo-black        | 0.00176 | 0.00308
tupelo-water        | 0.00144 | 0.00267
walnut-black        | 0.00190 | 0.00274
fir-white           | 0.00112 | 0.00245
pine-eastern-white  | 0.00071 | 0.00212
`;
