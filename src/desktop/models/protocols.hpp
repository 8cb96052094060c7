#pragma once
// Guided measurements at the bench: what is asked, what follows from it, and what is kept where. The answer comes from the engine.

#include <QString>
#include <QStringList>
#include <array>
#include <map>
#include <optional>
#include <vector>

#include "figures.hpp"
#include "gritwright/workbook/open_workbook.hpp"
#include "typed_text.hpp"

namespace gritwright::desktop {

enum class Protocol { jug, displacement, absorption, crumble, thoroughness, pot_by_balance, pot_by_volumes };
inline constexpr std::array protocols{Protocol::jug,          Protocol::displacement,   Protocol::absorption,    Protocol::crumble,
                                      Protocol::thoroughness, Protocol::pot_by_balance, Protocol::pot_by_volumes};

/// Stable, for object names and drafts: "jug".
[[nodiscard]] const char* key_of(Protocol protocol);

struct ProtocolWords {
  QString name;
  QString purpose;
  QStringList steps;
  QString picture;  ///< what the drawing shows, in a sentence
};
[[nodiscard]] ProtocolWords words_of(Protocol protocol);

/// True for a pot test.
[[nodiscard]] bool takes_pot(Protocol protocol);

/// Bags or kept mixes that can be measured so, newest first.
[[nodiscard]] std::vector<RecordLine> subjects_of(const OpenWorkbook& workbook, Protocol protocol);

/// A measurement as it is typed.
struct ProtocolSheet {
  Protocol protocol = Protocol::jug;
  std::optional<RecordRef> subject;
  QString container;                  ///< number of the pot in the record; empty: straight walls
  std::map<QString, QString> texts;   ///< by the field's key
};

struct ProtocolField {
  QString key;
  QString label;
  Kind kind = Kind::mass;
  QString hint;
};
/// Those of a crumble test are the sieves of the subject's latest sieve test.
[[nodiscard]] std::vector<ProtocolField> fields_of(const OpenWorkbook& workbook, const ProtocolSheet& sheet);

struct ProtocolAnswer {
  FigureGroup figures;
  QStringList questions;         ///< implausible, but it can be kept
  QStringList faults;            ///< cannot be
  QString waiting;               ///< what is still to be typed; empty: complete
  std::optional<Change> change;  ///< what keeping it does to the record, log entry included
};
[[nodiscard]] ProtocolAnswer answer_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const ProtocolSheet& sheet, UnitSystem units);

}  // namespace gritwright::desktop
