/** What rounding may take away from a size that is just right [mm]. */
export const SLACK = 1e-6;
