import { basename, dirname, join } from 'node:path';
import { walk, type ProseNode } from './prose-node.ts';

/**
 * Remark plugin: a picture in an author's text is shown as the site publishes it, encoded anew and without the place, time
 * and camera that phones write into it. What the guard refuses never comes here.
 *
 * @param base path of the site, with a slash at its end
 */
export function prosePictures({ base }: { readonly base: string }) {
  return async (tree: ProseNode, { path = '' }: { readonly path?: string }): Promise<void> => {
    const nodes = [...walk(tree)];
    const defined = new Map(nodes.flatMap((node) => (node.type === 'definition' ? [[node.identifier, node.url]] : [])));
    for (const node of nodes) {
      const url =
        node.type === 'image' ? node.url : node.type === 'imageReference' ? defined.get(node.identifier) : null;
      if (!url) continue;
      const { largestPhoto } = await import('./published-photo.ts'); // slow to load, and few texts have pictures
      const { name, width, height } = await largestPhoto(join(dirname(path), url));
      const trial = encodeURIComponent(basename(dirname(path)));
      Object.assign(node, {
        type: 'image',
        url: `${base}trials/${trial}/photos/${encodeURIComponent(name)}`,
        data: { ...node.data, hProperties: { width, height, loading: 'lazy' } },
      });
    }
  };
}
