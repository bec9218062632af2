const FORBIDDEN = 'you have no right to it';
const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is used up',
  EROFS: 'the disk can only be read',
  EACCES: FORBIDDEN,
  EPERM: FORBIDDEN,
  ENOTDIR: 'there is a file where a folder should be',
  EEXIST: 'something else stands there',
  ENOTEMPTY: 'something else stands there',
  EISDIR: 'there is a folder where a file should be',
  ENAMETOOLONG: 'its name is too long',
  EFBIG: 'it is larger than this disk allows',
  EIO: 'the disk is faulty',
  ENOENT: 'it, or a folder above it, is not there',
  EMFILE: 'too many files are open',
  EBUSY: 'another program is using it',
};

/**
 * Why the operating system refused to read or write something, as part of a sentence.
 *
 * @param code as the system names it, such as `ENOSPC`; it stands behind the reason, so that it can be looked up
 */
export const systemReason = (code: string): string => `${REASONS[code] ?? 'the system refused it'} (${code})`;
