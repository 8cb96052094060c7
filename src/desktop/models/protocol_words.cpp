#include <QCoreApplication>

#include "protocols.hpp"

namespace gritwright::desktop {

namespace {

class WordsOfProtocol {
  Q_DECLARE_TR_FUNCTIONS(Protocols)
};

}  // namespace

const char* key_of(Protocol protocol) {
  switch (protocol) {
    case Protocol::jug: return "jug";
    case Protocol::displacement: return "displacement";
    case Protocol::absorption: return "absorption";
    case Protocol::crumble: return "crumble";
    case Protocol::thoroughness: return "thoroughness";
    case Protocol::pot_by_balance: return "pot_by_balance";
    case Protocol::pot_by_volumes: return "pot_by_volumes";
  }
  return "";
}

bool takes_pot(Protocol protocol) { return protocol == Protocol::pot_by_balance || protocol == Protocol::pot_by_volumes; }

ProtocolWords words_of(Protocol protocol) {
  switch (protocol) {
    case Protocol::jug:
      return {WordsOfProtocol::tr("Litre weight by jug"),
              WordsOfProtocol::tr("What a litre weighs, loose and worked in. It turns parts into masses, and says how much a mix settles."),
              {WordsOfProtocol::tr("Weigh the empty jug. Fill it loosely from a scoop held at the rim, heaped, and strike it off level. Weigh."),
               WordsOfProtocol::tr("Empty it, fill and weigh once more: two fills within 3 % are good."),
               WordsOfProtocol::tr("Work the grain in with a stick, as in a pot, without adding any. Read the litres at the mark.")},
              WordsOfProtocol::tr("Two jugs: one heaped and struck off level, one with the same grain worked in with a stick and standing lower.")};
    case Protocol::displacement:
      return {WordsOfProtocol::tr("Grain density by displacement"),
              WordsOfProtocol::tr("What the grain weighs with its inner pores. With the litre weight it gives the voids between the grains."),
              {WordsOfProtocol::tr("Soak the grain for 24 h. Dab it dry until its surface no longer shines. Weigh."),
               WordsOfProtocol::tr("Weigh the jug filled with water to the mark. Put the grain in, stir the air out, top up or draw off to the same mark. Weigh."),
               WordsOfProtocol::tr("Dry the grain at 105 °C or on a warm stove until it no longer gets lighter. Weigh.")},
              WordsOfProtocol::tr("Two jugs filled with water to the same mark, the right one with soaked grain at the bottom.")};
    case Protocol::absorption:
      return {WordsOfProtocol::tr("Water absorption in 24 h"),
              WordsOfProtocol::tr("The water that stays inside the grains: it is there between waterings and takes no air."),
              {WordsOfProtocol::tr("Soak a handful for 24 h. Dab it dry until its surface no longer shines. Weigh."), WordsOfProtocol::tr("Dry the same grain until it no longer gets lighter. Weigh.")},
              WordsOfProtocol::tr("Grain under water in a dish, then the same grain spread out to dry.")};
    case Protocol::crumble:
      return {WordsOfProtocol::tr("Crumble test"),
              WordsOfProtocol::tr("How fast the grain breaks down, by shaking or by freezing and thawing. It says for how many seasons the mix keeps its air."),
              {WordsOfProtocol::tr("Take sieved grain of the bag. Shake it in a closed tin, or wet it, freeze it and thaw it, so many rounds."),
               WordsOfProtocol::tr("Dry it and sieve it again on the same sieves. Wear a dust mask.")},
              WordsOfProtocol::tr("A tin that is shaken, and the stack of sieves that the grain goes through again.")};
    case Protocol::thoroughness:
      return {WordsOfProtocol::tr("Was it sieved long enough?"),
              WordsOfProtocol::tr("One more minute of shaking by hand: less than half a percent may still fall through."),
              {WordsOfProtocol::tr("After the sieve test shake every sieve one more minute over a clean sheet."), WordsOfProtocol::tr("Weigh all that fell through.")},
              WordsOfProtocol::tr("A sieve shaken over a sheet on which a little grain lies.")};
    case Protocol::pot_by_balance:
      return {WordsOfProtocol::tr("Pot test by balance"),
              WordsOfProtocol::tr("The air and water of this mix in a real pot. It corrects the estimates of the mix and shows how far off they were."),
              {WordsOfProtocol::tr("Soak the mix for a day. Fill the pot and work it in as you would around a tree. Seal the holes."),
               WordsOfProtocol::tr("Flood slowly from below until a film shines on top. Weigh. Open the holes and let it drain level for half an hour. Weigh."),
               WordsOfProtocol::tr("Dry everything until it no longer gets lighter. Weigh; the empty pot too. A wet pot is heavy: lift with both hands.")},
              WordsOfProtocol::tr("A pot on a balance three times: flooded to the rim, drained with water left at the bottom, dry.")};
    case Protocol::pot_by_volumes:
      return {WordsOfProtocol::tr("Pot test by volumes only"),
              WordsOfProtocol::tr("The same without a balance: water poured in and water caught."),
              {WordsOfProtocol::tr("Fill the pot with dry mix and work it in. Seal the holes."),
               WordsOfProtocol::tr("Pour in measured water slowly until a shiny film stands, and again after a day's soak. Note all of it."),
               WordsOfProtocol::tr("Open the holes over a bowl. After half an hour measure what ran out.")},
              WordsOfProtocol::tr("A measuring jug pours into a pot, and a bowl below catches what drains.")};
  }
  return {};
}

}  // namespace gritwright::desktop
