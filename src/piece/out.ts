/** How far a cut reaches out of the wood, so that no skin is left by rounding [mm]. */
export const OUT = 1;
