/**
 * The one door through which YAML comes in, and the edits that change a line of it and leave the rest as it is. Start at
 * {@link fayline.store.file.yaml.YamlDoor}. What a key means does not belong here.
 */
@NullMarked
package fayline.store.file.yaml;

import org.jspecify.annotations.NullMarked;
