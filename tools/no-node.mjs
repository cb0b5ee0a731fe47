// Stands for Node's own modules in the page: packages that run in both places name them, and in a
// browser never come to use them.
export {};
