#include "gritwright/formats/recall_file.hpp"

#include <nlohmann/json.hpp>

#include "gritwright/formats/csv_text.hpp"
#include "record_archive.hpp"

namespace gritwright {

namespace {

using RecallJson = nlohmann::ordered_json;

RecallJson or_null(const std::string& text) { return text.empty() ? RecallJson(nullptr) : RecallJson(text); }

std::string way_text(const RecallRow& row) {
  std::string text;
  for (const RecordRef& ref : row.way) {
    if (!text.empty()) text += " > ";
    text += ref.id;
  }
  return text;
}

std::string dumped(const RecallJson& json) { return json.dump(2, ' ', false, nlohmann::detail::error_handler_t::replace) + '\n'; }

RecallJson row_json(const RecallRow& row) {
  RecallJson json{{"kind", kind_name(row.ref.kind)}, {"id", row.ref.id}, {"name", or_null(row.name)}};
  const bool is_tree = row.ref.kind == RecordKind::tree;
  json[is_tree ? "species" : "material"] = or_null(row.species);
  if (is_tree) {
    json["condition"] = row.condition ? RecallJson(condition_name(*row.condition)) : RecallJson(nullptr);
    json["mix"] = or_null(row.mix);
    json["container"] = or_null(row.container);
  } else {
    json["stock_g"] = row.stock ? RecallJson(as_typed(in_g(*row.stock))) : RecallJson(nullptr);
  }
  json["standing"] = standing_name(row.standing);
  json["certain"] = row.certain;
  json["day"] = or_null(row.day);
  json["until"] = or_null(row.until);
  json["deleted"] = row.deleted;
  json["way"] = RecallJson::array();
  for (const RecordRef& ref : row.way) json["way"].push_back(ref_text(ref));
  return json;
}

}  // namespace

std::string standing_name(Standing standing) {
  switch (standing) {
    case Standing::now: return "now";
    case Standing::may_remain: return "may-remain";
    case Standing::was: return "was";
  }
  return {};
}

std::string trait_name(TraitSort sort) {
  switch (sort) {
    case TraitSort::lot: return "lot";
    case TraitSort::mix: return "mix";
    case TraitSort::depth: return "depth";
    case TraitSort::day: return "day";
    case TraitSort::plan: return "plan";
    case TraitSort::removed_share: return "removed-share";
  }
  return {};
}

std::string write_recall_csv(const RecallList& list) {
  std::string text = csv_row({"kind", "id", "name", "species_or_material", "condition", "standing", "certain", "day", "until", "mix",
                              "container", "stock_g", "way"});
  for (const auto* rows : {&list.trees, &list.holders}) {
    for (const RecallRow& row : *rows) {
      text += csv_row({std::string(kind_name(row.ref.kind)), row.ref.id, row.name, row.species,
                       row.condition ? condition_name(*row.condition) : "", standing_name(row.standing), row.certain ? "yes" : "may",
                       row.day, row.until, row.mix, row.container, row.stock ? RecallJson(as_typed(in_g(*row.stock))).dump() : "", way_text(row)});
    }
  }
  return text;
}

std::string write_recall_json(const RecallList& list) {
  RecallJson json{{"format", "gritwright/recall-list/1"}, {"of", ref_text(list.of)}, {"title", list.title}};
  json["trees"] = RecallJson::array();
  for (const RecallRow& row : list.trees) json["trees"].push_back(row_json(row));
  json["holders"] = RecallJson::array();
  for (const RecallRow& row : list.holders) json["holders"].push_back(row_json(row));
  return dumped(json);
}

std::string write_shared_csv(const SharedTraits& shared) {
  std::string text = csv_row({"trait", "value", "title", "count", "among", "others", "others_among", "uncertain"});
  for (const SharedTrait& trait : shared.traits)
    text += csv_row({trait_name(trait.sort), trait.value, trait.title, std::to_string(trait.count), std::to_string(trait.among),
                     std::to_string(trait.others), std::to_string(trait.others_among), std::to_string(trait.uncertain)});
  return text;
}

std::string write_shared_json(const SharedTraits& shared) {
  RecallJson json{{"format", "gritwright/shared-traits/1"}, {"trees", RecallJson::array()}, {"traits", RecallJson::array()}};
  for (const RecordRef& tree : shared.trees) json["trees"].push_back(tree.id);
  for (const SharedTrait& trait : shared.traits)
    json["traits"].push_back({{"trait", trait_name(trait.sort)},
                              {"value", trait.value},
                              {"title", or_null(trait.title)},
                              {"count", trait.count},
                              {"among", trait.among},
                              {"others", trait.others},
                              {"others_among", trait.others_among},
                              {"uncertain", trait.uncertain}});
  return dumped(json);
}

}  // namespace gritwright
