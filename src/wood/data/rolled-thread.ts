/**
 * Rolled-thread screws for wood, inches: a fastener trade page quoting the industry standard, read.
 * The body is thinner than the thread, so there is no full shank to clear.
 */
export const rolledThreadRows = `
number | thread_max_in | thread_min_in | body_max_in | body_min_in
4      | 0.116         | 0.105         | 0.095       | 0.084
6      | 0.142         | 0.131         | 0.118       | 0.107
8      | 0.168         | 0.157         | 0.136       | 0.125
10     | 0.194         | 0.183         | 0.157       | 0.146
12     | 0.22          | 0.209         | 0.176       | 0.165
14     | 0.246         | 0.235         | 0.201       | 0.19
`;
