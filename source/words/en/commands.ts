/** The subcommands: their help, and what they print. */
export const commands = {};
