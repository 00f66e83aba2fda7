/** E: a module that does nothing. What it takes is Node's own. */
export {}
