#include "record_index.hpp"

#include <array>
#include <charconv>
#include <utility>
#include <vector>

namespace gritwright {

namespace {

std::string plain_number(double value) {
  std::array<char, 32> digits{};
  return {digits.data(), std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::general, 6).ptr};
}

std::string band(std::optional<Aperture> from, std::optional<Aperture> to) {
  if (from && to) return plain_number(in_mm(*from)) + "-" + plain_number(in_mm(*to)) + " mm";
  if (from) return "> " + plain_number(in_mm(*from)) + " mm";
  if (to) return "< " + plain_number(in_mm(*to)) + " mm";
  return {};
}

std::string joined(std::initializer_list<std::string> parts) {
  std::string text;
  for (const std::string& part : parts)
    if (!part.empty()) text += (text.empty() ? "" : " ") + part;
  return text;
}

// As in the record's JSON; an index of the schema names one of them.
const char* word_of_sort(LogSort sort) {
  switch (sort) {
    case LogSort::event: return "event";
    case LogSort::observation: return "observation";
    case LogSort::bookkeeping: return "bookkeeping";
  }
  return "";
}

class Indexer {
 public:
  explicit Indexer(const RecordRef& self) : self_(self) {}

  IndexEntry entry;

  void operator()(const OwnMaterial& material) {
    entry.title = material.name;
    entry.subject = material.resembles.value_or("");
    words({material.name, entry.subject, material.note});
  }
  void operator()(const Bag& bag) {
    entry.title = joined({bag.material, bag.printed_size ? band(bag.printed_size->from, bag.printed_size->to) : "", bag.lot});
    entry.subject = bag.material;
    entry.day = bag.received.value_or("");
    words({bag.material, bag.lot, bag.note});
    if (!bag.reclaimed) return;
    link_from("reclaimed", ref_to(bag.reclaimed->tree), bag.reclaimed->day.value_or(""));
    if (!bag.reclaimed->mix) return;
    link_from("of-mix", ref_to(*bag.reclaimed->mix));
    // The tree's own history may not reach back so far.
    entry.links.push_back({"reclaimed", ref_to(*bag.reclaimed->mix), self_, bag.reclaimed->day.value_or(""), "", false});
  }
  void operator()(const Bin& bin) {
    entry.title = bin.name;
    entry.subject = bin.material;
    words({bin.name, bin.material, bin.note});
    for (const BinContent& content : bin.contents)
      entry.links.push_back({"tipped", content.source, self_, content.day.value_or(""), content.emptied.value_or(""),
                             lay_alone(content, bin)});
  }
  void operator()(const Fraction& fraction) {
    entry.title = joined({fraction.material, band(fraction.from, fraction.to)});
    entry.subject = fraction.material;
    entry.day = fraction.day.value_or("");
    words({fraction.material, fraction.source.id, fraction.note});
    link_from("screened", fraction.source, entry.day);
  }
  void operator()(const SieveSet& set) {
    entry.title = set.name;
    words({set.name, set.note});
  }
  void operator()(const RecordedSieveTest& test) {
    const std::string material = test.test.material.value_or("");
    entry.title = joined({material, test.test.lot.value_or("")});
    if (entry.title.empty() && test.of) entry.title = test.of->id;
    entry.subject = material;
    entry.day = test.test.date.value_or("");
    words({material, test.test.lot.value_or(""), test.of ? test.of->id : "", test.note});
    if (test.of) link_from("tested", *test.of, entry.day);
    if (test.sieve_set) link_from("with", ref_to(*test.sieve_set));
  }
  void operator()(const MixVersion& version) {
    entry.title = version.mix.name;
    entry.day = version.day.value_or("");
    words({version.mix.name, version.note});
    for (const Component& component : version.mix.components) words({component.name, component.material.value_or("")});
    for (const auto& source : version.sources) {
      if (!source) continue;
      words({source->id});
      // Which bag was really taken, a batch knows; the design only suggests it.
      entry.links.push_back({"designed", *source, self_, "", "", false});
    }
    if (version.calibrated_by) link_from("calibrated", *version.calibrated_by);
  }
  void operator()(const RecordedContainer& container) {
    entry.title = container.container.name;
    words({container.container.name, container.note});
  }
  void operator()(const Tree& tree) {
    entry.title = joined({tree.name, tree.name == tree.species ? "" : tree.species});
    entry.subject = tree.species;
    if (const Repotting* last = stands_in(tree)) entry.day = last->day;
    words({tree.name, tree.species, tree.note, tree.window.ready_when});
    for (const ConditionEntry& condition : tree.conditions) words({condition.note});
    for (const Inspection& inspection : tree.inspections) words({inspection.note});
    for (std::size_t i = 0; i < tree.repottings.size(); ++i) index_repotting(tree.repottings, i);
  }
  void operator()(const KeptRootMassPlan& plan) {
    entry.title = plan.name;
    entry.day = plan.day.value_or("");
    words({plan.name, plan.note});
    if (plan.tree) link_from("planned", ref_to(*plan.tree), entry.day);
    if (plan.mix) link_from("planned", ref_to(*plan.mix), entry.day);
  }
  void operator()(const RepottingDay& day) {
    entry.title = joined({day.name, day.day});
    entry.day = day.day;
    words({day.name, day.note});
    for (const DayTree& tree : day.trees) {
      words({tree.note, tree.helper});
      link_from("planned", ref_to(tree.tree), day.day);
      if (tree.plan) link_from("planned", RecordRef{RecordKind::root_mass_plan, tree.plan->text}, day.day);
      if (tree.mix) link_from("planned", ref_to(*tree.mix), day.day);
      if (tree.container) link_from("planned", ref_to(*tree.container), day.day);
    }
  }
  void operator()(const Batch& batch) {
    entry.title = batch.mix ? batch.mix->text : self_.id;
    entry.day = batch.day.value_or("");
    words({batch.note, batch.mix ? batch.mix->text : ""});
    if (batch.mix) link_from("of-mix", ref_to(*batch.mix), entry.day);
    if (batch.repotting_day) link_from("made-for", ref_to(*batch.repotting_day), entry.day);
    for (const BatchPart& part : batch.parts) link_from("mixed", part.source, entry.day);
    if (batch.mix && batch.parts.empty()) entry.links.push_back({"mixed", ref_to(*batch.mix), self_, entry.day, "", false});
  }
  void operator()(const PotTest& test) {
    entry.title = test.mix ? test.mix->text : self_.id;
    entry.day = test.day.value_or("");
    words({test.note, test.mix ? test.mix->text : ""});
    if (test.mix) link_from("tested", ref_to(*test.mix), entry.day);
    if (test.container) link_from("with", ref_to(*test.container), entry.day);
  }
  void operator()(const StockEntry& stock) {
    entry.title = stock.holder.id;
    entry.day = stock.day;
    words({stock.holder.id, stock.note});
    link_from("stock", stock.holder, stock.day);
    if (!stock.other) return;
    const auto flow = [&](const RecordRef& from, const RecordRef& to) {
      // What a bin holds beside it, and until when, the bin's own contents tell.
      entry.links.push_back({"used", from, to, stock.day, "", to.kind != RecordKind::bin});
    };
    switch (stock.reason) {
      case StockReason::used:
      case StockReason::screened_out_of: flow(stock.holder, *stock.other); break;
      case StockReason::screened_into:
      case StockReason::returned: flow(*stock.other, stock.holder); break;
      default: break;
    }
  }
  void operator()(const SpeciesProfile& profile) {
    entry.title = profile.name;
    words({profile.name, profile.note});
  }
  void operator()(const LogEntry& log) {
    entry.title = log.text;
    entry.subject = word_of_sort(log.sort);
    entry.day = log.day;
    words({log.text});
    for (const RecordRef& about : log.about) {
      words({about.id});
      link_from("about", about, log.day);
    }
  }

  void words(std::initializer_list<std::string> more) {
    for (const std::string& word : more)
      if (!word.empty()) entry.words += word + '\n';
  }

 private:
  void link_from(const char* role, RecordRef from, std::string day = {}) {
    entry.links.push_back({role, std::move(from), self_, std::move(day), "", true});
  }
  void index_repotting(const std::vector<Repotting>& all, std::size_t index) {
    const Repotting& repotting = all[index];
    const bool last = index + 1 == all.size();
    const std::string until = last ? "" : all[index + 1].day;
    words({repotting.note});
    std::vector<Link> grain;
    for (const RecordRef& ref : repotting.grain) grain.push_back({"potted", ref, self_, repotting.day, until, true});
    if (repotting.container) entry.links.push_back({"stands-in", ref_to(*repotting.container), self_, repotting.day, until, true});
    if (repotting.mix) {
      entry.links.push_back({"of-mix", ref_to(*repotting.mix), self_, repotting.day, until, true});
      // Where no grain was written down, the design is the only thread there is.
      if (repotting.grain.empty()) grain.push_back({"potted", ref_to(*repotting.mix), self_, repotting.day, until, false});
    }
    entry.links.insert(entry.links.end(), grain.begin(), grain.end());
    if (last || all[index + 1].bare_rooted) return;
    // What was not washed off stays between the roots.
    std::string gone;
    for (std::size_t later = index + 2; later < all.size() && gone.empty(); ++later)
      if (all[later].bare_rooted) gone = all[later].day;
    for (Link& link : grain) {
      link.role = "remains";
      link.until = gone;
      link.certain = false;
      entry.links.push_back(std::move(link));
    }
  }
  /// True where what is taken out while `content` lies in the bin can be nothing else.
  static bool lay_alone(const BinContent& content, const Bin& bin) {
    const auto over_before = [](const BinContent& one, const BinContent& other) {
      return one.emptied && other.day && *one.emptied <= *other.day;
    };
    for (const BinContent& other : bin.contents)
      if (&other != &content && !over_before(other, content) && !over_before(content, other)) return false;
    return true;
  }

  RecordRef self_;
};

}  // namespace

IndexEntry index_of(const RecordRef& ref, const Record& record) {
  Indexer indexer(ref);
  indexer.words({ref.id});
  std::visit(indexer, record);
  return std::move(indexer.entry);
}

}  // namespace gritwright
