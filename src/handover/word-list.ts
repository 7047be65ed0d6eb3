/**
 * 256 plain words of our own choosing, one for each byte: short, easily said, and no two of them
 * told apart by one letter only. They are no words of a page but signs that two pages compare: the
 * devices may run different languages and have to show the same, so there is one list for all.
 */
export const WORDS: readonly string[] = `
  acorn alder anchor apple apron arch aspen attic autumn bagel bakery balcony bamboo basket bead
  beaver berry birch bison bluebell bonnet book boulder bramble brick bridge broom buffalo bugle
  butter cabin cactus canoe canvas carrot castle cedar cello chalk cherry chimney cinema circle
  cloud clover cobbler coffee collar comet copper coral cotton cradle cricket crown crumb cuckoo
  cupboard curtain cushion daisy desert diary dinner dolphin donkey doorway dragon drawer drum
  duck dune early easel echo eight elbow elm ember engine evening fabric feather fence fern fiddle
  field fjord flag flannel flint flour flute forest fossil fountain fox frost gallop garden garlic
  ginger giraffe glacier goose gravel guitar hammer harbour harp hedge helmet horizon hotel
  iceberg igloo indigo ink island ivory jasmine jelly jigsaw journey juniper kayak kettle kitchen
  kite knot ladder lagoon lantern lark lavender lemon lentil letter lilac linen lizard lobster
  lotus mango marble market meadow melon mill mirror mitten moss muffin mustard napkin nectar
  needle nest nickel north nutmeg oasis oatmeal ocean olive onion orbit orchard oven owl paddle
  palm pancake panther parsley peach pebble pepper piano picnic pigeon pillow planet pocket pond
  poppy potato prairie pumpkin puzzle quarry quilt quince rabbit radish raisin ribbon river robin
  ruby saffron sail salmon scarf school seagull sesame shadow shell silver snow sofa sparrow spoon
  squirrel stable sugar summit sunflower swan teapot temple tent thimble thread thunder timber
  toast tomato tower train trumpet tulip tunnel turtle twig umbrella upland urchin valley vanilla
  velvet village vinegar violin volcano waffle walnut water whale wheat window wolf yoghurt zebra
  zigzag
`
  .trim()
  .split(/\s+/)
