const ODD = /[<>:"|?*\\\p{Cc}\p{Cf}]|[. ]$|^\.|^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/iu;

/** Whether every system can write a file of this name, and writes it as it stands. */
export const isPortableName = (name: string): boolean => !ODD.test(name);
