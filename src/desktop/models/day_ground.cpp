#include "day_ground.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <map>
#include <set>

#include "bench_evaluation.hpp"
#include "bud_words.hpp"
#include "gritwright/formats/root_mass_plan_file.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/root_mix.hpp"
#include "gritwright/models/root_plan.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "known_mix.hpp"
#include "pot_library.hpp"
#include "pot_test_records.hpp"
#include "record_surroundings.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class GroundText {
  Q_DECLARE_TR_FUNCTIONS(DayGround)
};

std::string with_blanks(std::string name) {
  std::ranges::replace(name, '_', ' ');
  return name;
}

/// What a mix was designed with: the sizes between which its grain lies, and the share of it that is no coarser.
struct WantedSizes {
  SizeBand band;
  double up_to = 1;
};

/// A pan reaches down to 0. Where the coarsest sieve held some back, that much is wanted too, however coarse it is.
std::optional<WantedSizes> wanted_sizes(const GrainSizes& sizes) {
  const auto* grading = std::get_if<Grading>(&sizes);
  if (grading == nullptr || grading->points.size() < 2) return std::nullopt;
  constexpr double hardly_any = 0.005;
  WantedSizes wanted{{aperture_mm(0), grading->points.back().aperture}, grading->points.back().passing.value()};
  for (const GradingPoint& point : grading->points) {
    if (point.passing.value() <= hardly_any) wanted.band.from = point.aperture;
    if (point.passing.value() >= 1 - hardly_any) {
      wanted.band.to = point.aperture;
      wanted.up_to = 1;
      break;
    }
  }
  return wanted;
}

/// Whether a bag of `grain` must be screened to give what a mix was designed with.
bool needs_screening(const Grading& grain, const WantedSizes& wanted) {
  constexpr double hardly_any = 0.01;
  double below = 0;
  double up_to = 1;
  for (const GradingPoint& point : grain.points) {
    if (point.aperture <= wanted.band.from) below = point.passing.value();
    if (point.aperture <= wanted.band.to) up_to = point.passing.value();
  }
  return below > hardly_any || up_to < wanted.up_to - hardly_any;
}

template <class R>
std::map<std::string, R> by_id(const OpenWorkbook& workbook) {
  std::map<std::string, R> records;
  for (Stored<R>& stored : workbook.all<R>()) records.emplace(stored.id.text, std::move(stored.record));
  return records;
}

/// Reads what days hang on once, for one day or many.
class DayReader {
 public:
  DayReader(const OpenWorkbook& workbook, const Catalogue& catalogue, std::span<const MixCalibration> calibrations = {})
      : workbook_(workbook), catalogue_(catalogue), calibrations_(calibrations), trees_(by_id<Tree>(workbook)), mixes_(by_id<MixVersion>(workbook)), pots_(by_id<RecordedContainer>(workbook)) {
    for (const auto& [id, version] : mixes_) {
      const auto [stem, number] = stem_and_version(id);
      newest_[stem] = std::max(newest_[stem], number);
    }
  }

  const std::map<std::string, Tree>& trees() const { return trees_; }

  std::optional<Id<MixVersion>> newest_of(const Id<MixVersion>& id) const {
    const auto [stem, version] = stem_and_version(id.text);
    const auto newest = newest_.find(stem);
    if (newest == newest_.end()) return std::nullopt;
    for (const std::string& text : {stem + "/" + std::to_string(newest->second), stem})
      if (mixes_.contains(text)) return Id<MixVersion>{text};
    return std::nullopt;
  }

  /// Puts a tree into `ground`, or says why not. `row` is its place in the record's day.
  void add(DayGround& ground, const DayTree& row, std::size_t at, const std::optional<std::string>& day) {
    const auto tree = trees_.find(row.tree.text);
    const std::string title = tree == trees_.end() ? row.tree.text : tree_title(row.tree, tree->second);
    const auto leave_out = [&](const QString& reason) { ground.left_out.push_back({row.tree, title, reason}); };
    if (tree == trees_.end()) return leave_out(GroundText::tr("is no longer in the record: take it off"));
    if (!row.mix) return leave_out(GroundText::tr("has no mix yet: choose one"));
    const auto pot = row.container ? pots_.find(row.container->text) : pots_.end();
    if (!row.planned && pot == pots_.end()) return leave_out(GroundText::tr("has neither a pot nor planned litres: give one of them"));
    const auto mix = mix_name(ground, *row.mix);
    if (!mix) return leave_out(GroundText::tr("has a mix that can't be found: choose another"));
    PlannedTree planned = planned_tree(tree->second, title);
    planned.mix = *mix;
    if (pot != pots_.end()) planned.pot = pot_name(ground.plan, pot->first, pot->second.container);
    planned.plan = row.plan_name;
    if (row.planned) planned.fill = as_it_lies(*row.planned);
    for (const MixedVolume& worse : row.worse_plans) planned.worse_fills.push_back(as_it_lies(worse));
    planned.top_dressing = on_record(row.top_dressing) ? row.top_dressing : with_blanks(row.top_dressing);
    if (row.sphagnum) planned.layers.push_back({"sphagnum", *row.sphagnum, typical_density("sphagnum")});
    planned.kept_root_mass = row.kept_root_mass;
    planned.bud = bud_code(to_qt(row.bud));
    planned.helper = row.helper;
    planned.note = row.note;
    planned.day = day;
    ground.plan.trees.push_back(std::move(planned));
    ground.rows.push_back(at);
  }

  void add_losses(DayGround& ground, const RepottingDay* day) const {
    for (DayMix& mix : ground.plan.mixes) {
      // A mix's own figures first, then what was typed for the day, then what the litres used taught, then the usual spill.
      if (!mix.mix.settling && day != nullptr) mix.mix.settling = day->settling;
      if (!mix.mix.spill && day != nullptr) mix.mix.spill = day->spill;
      if (!mix.mix.spill && !ground.learnt.spill) mix.mix.spill = default_spill;
    }
  }

  void add_experience(DayGround& ground, const std::vector<Stored<RepottingDay>>& days) const {
    std::map<std::pair<std::string, std::string>, MixOnDay> mixes;  // by day and mix
    for (const auto& day : days) {
      for (const DayTree& tree : day.record.trees) {
        const bool known = tree.done && tree.used;
        if (tree.mix) {
          MixOnDay& mix = mixes[{day.id.text, tree.mix->text}];
          mix.day = day.record.day;
          mix.complete = mix.complete && known;
          if (known) mix.used_l += in_l(*tree.used);
        }
        if (!known) continue;
        if (const auto fill = fill_done(tree)) ground.plan.filled_before.push_back({as_it_lies(*fill), *tree.used});
      }
    }
    for (const auto& batch : workbook_.all<Batch>()) {
      if (!batch.record.repotting_day || !batch.record.mix) continue;
      const auto of_day = mixes.find({batch.record.repotting_day->text, batch.record.mix->text});
      if (of_day == mixes.end()) continue;
      MixOnDay& mix = of_day->second;
      const auto left = batch.record.left ? std::optional(in_l(*batch.record.left)) : litres_left(ref_to(batch.id));
      mix.complete = mix.complete && batch.record.made && left;
      if (!mix.complete) continue;
      mix.made_l += in_l(*batch.record.made);
      mix.left_l += *left;
    }
    // One tub fills several trees, and one tree takes from several tubs: only all of a mix's tubs and trees together tell what was spilt.
    std::vector<MixOnDay> told;
    for (const auto& [key, mix] : mixes) {
      if (mix.complete && mix.made_l > mix.left_l && mix.used_l > 0) told.push_back(mix);
    }
    std::ranges::stable_sort(told, {}, &MixOnDay::day);
    for (const MixOnDay& mix : told) ground.plan.emptied_before.push_back({mixed_l(mix.made_l), mixed_l(mix.used_l), mixed_l(mix.left_l)});
    ground.learnt = placing_experience(ground.plan.filled_before, ground.plan.emptied_before);
  }

  /// The bags that the mixes name, and those of the materials they name without a bag.
  void add_shelf(DayGround& ground, const std::optional<Id<RepottingDay>>& own_day) {
    std::map<RecordRef, Mass> put_back;
    if (own_day) {
      for (const auto& entry : workbook_.all<StockEntry>()) {
        if (entry.record.other == ref_to(*own_day)) put_back[entry.record.holder] -= entry.record.change;
      }
    }
    std::set<RecordRef> seen;
    std::set<std::string> materials;
    for (std::size_t i = 0; i < ground.mixes.size(); ++i) {
      for (std::size_t k = 0; k < ground.mixes[i].sources.size(); ++k) {
        const Component& component = ground.plan.mixes[i].mix.components[k];
        const auto& source = ground.mixes[i].sources[k];
        if (!source) {
          if (component.material) materials.insert(*component.material);
        } else if (seen.insert(*source).second) {
          add_supply(ground, *source, component, put_back[*source]);
        }
      }
    }
    const auto add_material = [&](const std::string& material, const auto& wanted_of) {
      for (const RecordKind kind : {RecordKind::fraction, RecordKind::bag}) {
        // Lists begin with what came in last; what came in first is used up first.
        std::vector<RecordLine> lines = workbook_.list(kind);
        std::ranges::reverse(lines);
        for (const RecordLine& line : lines) {
          const RecordRef& ref = line.ref;
          // A bag that this day emptied is one of its bags still.
          if (with_blanks(line.subject) != material || (line.stock && !(*line.stock + put_back[ref] > Mass{})) || !seen.insert(ref).second) continue;
          if (const std::optional<Component> wanted = wanted_of(ref)) add_supply(ground, ref, *wanted, put_back[ref]);
        }
      }
    };
    for (const std::string& material : materials) {
      const Component* wanted = component_of_material(ground.plan, material);
      add_material(material, [&](const RecordRef&) { return std::optional(*wanted); });
    }
    // A layer takes its grain as it came.
    for (const std::string& grain : layer_grain(ground.plan)) {
      const auto ref = on_record(grain);
      if (!ref) {
        add_material(grain, [&](const RecordRef& of_material) { return component_on_record(of_material, grain); });
      } else if (seen.insert(*ref).second) {
        if (const auto component = component_on_record(*ref, grain)) add_supply(ground, *ref, *component, put_back[*ref]);
      }
    }
    for (const auto& material : catalogue_.materials()) {
      if (material.bag_volume_l) ground.plan.typical_bags.emplace(with_blanks(material.name), loose_l(material.bag_volume_l->value));
    }
  }

  /// Grain that is kept for mixes of no tree of the day.
  void add_reserves(DayGround& ground) const {
    std::map<std::string, double> made_l;
    for (const auto& batch : workbook_.all<Batch>()) {
      if (batch.record.mix && batch.record.made) made_l[batch.record.mix->text] += in_l(*batch.record.made);
    }
    for (const auto& [id, version] : mixes_) {
      const bool of_day = std::ranges::any_of(ground.mixes, [&](const DayMixSources& mix) { return mix.id.text == id; });
      if (!version.reserved || of_day) continue;
      const double open_l = in_l(*version.reserved) - made_l[id];
      const auto state = mix_state(version.mix);
      const auto litres = state && open_l > 0 ? component_volumes(mixed_l(open_l), *state) : std::nullopt;
      for (std::size_t k = 0; litres && k < version.sources.size(); ++k) {
        if (!version.sources[k]) continue;
        const auto at = std::ranges::find(ground.shelf, *version.sources[k]);
        if (at == ground.shelf.end()) continue;
        auto& reserved = ground.plan.shelf[static_cast<std::size_t>(at - ground.shelf.begin())].reserved;
        reserved = loose_l(in_l(reserved.value_or(LooseVolume{})) + in_l((*litres)[k]));
      }
    }
  }

 private:
  /// What is known of all tubs and trees of one mix on one day.
  struct MixOnDay {
    std::string day;
    bool complete = true;
    double used_l = 0;
    double made_l = 0;
    double left_l = 0;
  };

  /// A fill as it lies is kept under the name of mixed litres in the record.
  static PotVolume as_it_lies(MixedVolume volume) { return pot_ml(in_l(volume) * 1000); }

  /// Litres of a batch that were measured and put back, into its own tub or a bin. Empty where nobody measured: then it tells no spill.
  std::optional<double> litres_left(const RecordRef& batch) const {
    std::optional<double> litres;
    for (const auto& entry : workbook_.all<StockEntry>()) {
      const StockEntry& line = entry.record;
      if (line.reason != StockReason::returned || !line.measured || (line.holder != batch && line.other != batch)) continue;
      litres = litres.value_or(0) + in_l(*line.measured);
    }
    return litres;
  }

  /// What layers of the day's trees are of: numbers of bags, bins and fractions, or materials.
  static std::set<std::string> layer_grain(const PlannedDay& plan) {
    std::set<std::string> grain;
    for (const PlannedTree& tree : plan.trees) {
      for (const GrainLayer& layer : tree.layers) grain.insert(layer.grain);
      if (!tree.top_dressing.empty()) grain.insert(tree.top_dressing);
      const auto pot = plan.pots.find(tree.pot);
      if (pot == plan.pots.end() || !pot->second.bottom_layer || !pot->second.bottom_layer->component) continue;
      const Component& component = *pot->second.bottom_layer->component;
      grain.insert(component.material.value_or(component.name));
    }
    return grain;
  }

  std::optional<RecordRef> on_record(const std::string& name) const {
    for (const RecordKind kind : {RecordKind::bag, RecordKind::fraction, RecordKind::bin}) {
      const RecordRef ref{kind, name};
      if (!name.empty() && workbook_.find(ref)) return ref;
    }
    return std::nullopt;
  }

  /// Grain of the record as a component; with its material's typical figures, or its litre weight alone, where its own don't make one.
  std::optional<Component> component_on_record(const RecordRef& ref, const std::string& material) const {
    const auto sheet = sheet_of_grain(workbook_, to_qt(ref.id));
    auto component = sheet ? evaluate_component(*sheet, catalogue_).component : std::nullopt;
    if (component) return component;
    const Material* known = catalogue_.find(sheet && !sheet->material.isEmpty() ? sheet->material.toStdString() : material);
    const auto own = bulk_density_of(workbook_, ref);
    if (known == nullptr && !own) return std::nullopt;
    Component plain;
    plain.name = ref.id;
    if (known != nullptr) plain.grain = typical_grain(*known);
    else plain.grain.bulk_density = *own;
    return plain;
  }

  std::optional<BulkDensity> typical_density(const std::string& material) const {
    const Material* known = catalogue_.find(material);
    if (known == nullptr) return std::nullopt;
    return dry_bulk_density(typical_grain(*known));
  }

  static const Component* component_of_material(const PlannedDay& plan, const std::string& material) {
    for (const DayMix& mix : plan.mixes) {
      for (const Component& component : mix.mix.components) {
        if (component.material == material) return &component;
      }
    }
    return nullptr;
  }

  std::optional<std::string> mix_name(DayGround& ground, const Id<MixVersion>& id) {
    for (std::size_t i = 0; i < ground.mixes.size(); ++i) {
      if (ground.mixes[i].id == id) return ground.plan.mixes[i].name;
    }
    DayMix mix;
    MixVersion version;
    if (const auto found = mixes_.find(id.text); found != mixes_.end()) {
      version = found->second;
    } else {
      const auto deleted = workbook_.find_even_deleted(ref_to(id));
      if (!deleted) return std::nullopt;
      version = std::get<MixVersion>(deleted->record);
      mix.deleted = true;
    }
    const auto [stem, number] = stem_and_version(id.text);
    mix.version = number;
    if (const auto newest = newest_.find(stem); newest != newest_.end()) mix.newest_version = std::max(newest->second, number);
    mix.name = version.mix.name;
    if (std::ranges::find(ground.plan.mixes, mix.name, &DayMix::name) != ground.plan.mixes.end()) mix.name += " " + id.text;
    mix.mix = std::move(version.mix);
    mix.mix.water = known_water(mix.mix, calibrations_);
    if (auto note = known_by_tests(mix.mix, calibrations_)) {
      note->where = mix.name;
      ground.pot_tests.push_back(*std::move(note));
    }
    version.sources.resize(mix.mix.components.size());
    name_by_source(mix.mix, version.sources);
    ground.mixes.push_back({id, std::move(version.sources)});
    ground.plan.mixes.push_back(std::move(mix));
    return ground.plan.mixes.back().name;
  }

  /// Grain goes by its bag, so that two mixes of one bag are added up; material names are written as people do.
  static void name_by_source(Mix& mix, const std::vector<std::optional<RecordRef>>& sources) {
    std::set<std::string> used;
    for (std::size_t k = 0; k < sources.size(); ++k) {
      Component& component = mix.components[k];
      if (component.material) component.material = with_blanks(*component.material);
      if (sources[k] && used.insert(sources[k]->id).second) component.name = sources[k]->id;
    }
  }

  static std::string pot_name(PlannedDay& plan, const std::string& id, const Container& container) {
    std::string name = container.name.empty() || container.name == id ? id : id + " " + container.name;
    Container& pot = plan.pots.emplace(name, container).first->second;
    if (pot.bottom_layer && pot.bottom_layer->component && pot.bottom_layer->component->material)
      pot.bottom_layer->component->material = with_blanks(*pot.bottom_layer->component->material);
    return name;
  }

  static PlannedTree planned_tree(const Tree& tree, const std::string& title) {
    PlannedTree planned;
    planned.name = title;
    planned.species = tree.species;
    planned.group = tree.group;
    planned.mass = tree.mass;
    if (!tree.repottings.empty()) planned.last_repotted = tree.repottings.back().day;
    planned.due = tree.due;
    planned.window_opens = tree.window.opens;
    planned.window_closes = tree.window.closes;
    return planned;
  }

  void add_supply(DayGround& ground, const RecordRef& ref, const Component& wanted, Mass put_back) {
    GrainSupply supply;
    supply.bag = ref.id;
    std::optional<Mass> dry = workbook_.stock_of(ref);
    // The mix may have been designed with a typical litre weight; what is booked goes by the grain's own.
    supply.bulk_density = bulk_density_of(workbook_, ref).value_or(dry_bulk_density(wanted.grain));
    supply.particle_density = wanted.grain.particle_density;
    if (ref.kind == RecordKind::bag) {
      const auto stored = workbook_.find(Id<Bag>{ref.id});
      if (!stored) return;
      const Bag& bag = stored->record;
      supply.material = with_blanks(bag.material);
      supply.bag_volume = bag.volume;
      supply.price = bag.price;
      if (!dry) dry = dry_mass_received(bag);
      read_sizes(supply, ref, wanted);
    } else {
      // What was screened, mixed or tipped together is used as it is.
      supply.screened = true;
      if (const auto fraction = workbook_.find(Id<Fraction>{ref.id}); fraction && ref.kind == RecordKind::fraction) {
        supply.material = with_blanks(fraction->record.material);
        if (!dry) dry = fraction->record.dry_mass;
      }
    }
    if (dry) {
      const Mass books = *dry + put_back;
      if (books < Mass{}) ground.below_zero.push_back(ref);
      supply.stock = loose_volume(std::max(Mass{}, books), *supply.bulk_density);
    }
    ground.shelf.push_back(ref);
    ground.plan.shelf.push_back(std::move(supply));
  }

  /// A bag is screened where the mix was designed with a narrower grain than it holds.
  void read_sizes(GrainSupply& supply, const RecordRef& ref, const Component& wanted) const {
    const auto sizes = wanted_sizes(wanted.sizes);
    const auto sheet = sheet_of_grain(workbook_, to_qt(ref.id));
    const auto component = sheet ? evaluate_component(*sheet, catalogue_).component : std::nullopt;
    const auto* grading = component ? std::get_if<Grading>(&component->sizes) : nullptr;
    // Nothing is screened off a grain that reaches down to its pan, sieved or not.
    const bool as_it_came = !sizes || (grading != nullptr ? !needs_screening(*grading, *sizes) : !(in_mm(sizes->band.from) > 0));
    if (as_it_came) {
      supply.screened = true;
      return;
    }
    supply.keeps = sizes->band;
    if (grading != nullptr) supply.grading = *grading;
  }

  const OpenWorkbook& workbook_;
  const Catalogue& catalogue_;
  std::span<const MixCalibration> calibrations_;
  std::map<std::string, Tree> trees_;
  std::map<std::string, MixVersion> mixes_;
  std::map<std::string, RecordedContainer> pots_;
  std::map<std::string, int> newest_;
};

bool has_open_trees(const RepottingDay& day) {
  return std::ranges::any_of(day.trees, [](const DayTree& tree) { return !tree.done; });
}

/// Trees of `days` that are to be done, each once: the first day that names it counts.
void add_open_trees(DayReader& reader, DayGround& ground, const std::vector<Stored<RepottingDay>>& days, const std::string& before, std::set<std::string>& taken) {
  for (const auto& day : days) {
    if (!has_open_trees(day.record) || (!before.empty() && !(day.record.day < before))) continue;
    for (std::size_t i = 0; i < day.record.trees.size(); ++i) {
      const DayTree& tree = day.record.trees[i];
      if (!tree.done && taken.insert(tree.tree.text).second) reader.add(ground, tree, i, day.record.day);
    }
  }
}

}  // namespace

std::optional<Id<MixVersion>> newest_version(const OpenWorkbook& workbook, const Id<MixVersion>& mix) {
  const std::string stem = stem_and_version(mix.text).first;
  std::optional<Id<MixVersion>> newest;
  int largest = 0;
  for (const RecordLine& line : workbook.list(RecordKind::mix)) {
    const auto [of, version] = stem_and_version(line.ref.id);
    if (of != stem || version <= largest) continue;
    largest = version;
    newest = Id<MixVersion>{line.ref.id};
  }
  return newest;
}

std::optional<MixedVolume> fill_done(const DayTree& tree) {
  const std::string& done = tree.done_plan.empty() ? tree.plan_name : tree.done_plan;
  if (done == tree.plan_name) return tree.planned;
  if (done.size() != 1 || tree.plan_name.size() != 1 || done < tree.plan_name) return std::nullopt;
  const auto worse = static_cast<std::size_t>(done.front() - tree.plan_name.front()) - 1;
  return worse < tree.worse_plans.size() ? std::optional(tree.worse_plans[worse]) : std::nullopt;
}

std::string tree_title(const Id<Tree>& id, const Tree& tree) {
  const std::string& name = tree.name.empty() ? tree.species : tree.name;
  return name.empty() || name == id.text ? id.text : id.text + " " + name;
}

DayGround ground_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const Id<RepottingDay>& id, std::span<const MixCalibration> calibrations) {
  const auto stored = workbook.find(id);
  return stored ? ground_of(workbook, catalogue, *stored, calibrations) : DayGround{};
}

DayGround ground_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const Stored<RepottingDay>& stored, std::span<const MixCalibration> calibrations) {
  DayGround ground;
  const RepottingDay& day = stored.record;
  const auto days = workbook.all<RepottingDay>();
  DayReader reader(workbook, catalogue, calibrations);
  for (std::size_t i = 0; i < day.trees.size(); ++i) reader.add(ground, day.trees[i], i, {});
  ground.plan.name = day.name;
  ground.plan.day = day.day;
  if (day.tub) ground.plan.tub = loose_l(in_l(*day.tub));
  ground.plan.scoop = day.scoop;
  ground.plan.checklist = day.checklist;
  ground.plan.sheet_revision = day.sheet_revision;
  reader.add_experience(ground, days);
  reader.add_losses(ground, &day);
  reader.add_shelf(ground, stored.id);
  reader.add_reserves(ground);
  // What earlier days want of the same bags.
  DayGround earlier;
  std::set<std::string> own;
  for (const DayTree& tree : day.trees) own.insert(tree.tree.text);
  add_open_trees(reader, earlier, days, day.day, own);
  if (!earlier.plan.trees.empty()) {
    reader.add_losses(earlier, nullptr);
    earlier.plan.shelf = ground.plan.shelf;
    PlannedSeason season{earlier.plan, day.day};
    if (const auto answer = work_out(season)) {
      for (const DayOfSeason& one : answer->days) {
        for (std::size_t i = 0; i < one.answer.shelf.size(); ++i) {
          auto& reserved = ground.plan.shelf[i].reserved;
          const double taken_l = in_l(one.answer.shelf[i].taken.value_or(LooseVolume{}));
          if (taken_l > 0) reserved = loose_l(in_l(reserved.value_or(LooseVolume{})) + taken_l);
        }
      }
    }
  }
  return ground;
}

SeasonGround season_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const std::string& until, std::span<const MixCalibration> calibrations) {
  DayReader reader(workbook, catalogue, calibrations);
  const auto days = workbook.all<RepottingDay>();
  DayGround ground;
  std::set<std::string> taken;
  add_open_trees(reader, ground, days, {}, taken);
  for (const auto& tree : workbook.all<Tree>()) {
    if (!taken.insert(tree.id.text).second || condition_now(tree.record) == Condition::dead) continue;
    DayTree row;
    row.tree = tree.id;
    if (const Repotting* last = stands_in(tree.record)) {
      row.mix = last->mix ? reader.newest_of(*last->mix) : std::nullopt;
      row.container = last->container;
    }
    PlannedTree seen;
    seen.group = tree.record.group;
    seen.due = tree.record.due;
    if (!tree.record.repottings.empty()) seen.last_repotted = tree.record.repottings.back().day;
    // A tree that is not due needs no mix.
    const Due due = due_by(seen, until).due;
    if (due == Due::not_yet) continue;
    reader.add(ground, row, 0, {});
  }
  reader.add_experience(ground, days);
  reader.add_losses(ground, nullptr);
  reader.add_shelf(ground, {});
  reader.add_reserves(ground);
  return {{std::move(ground.plan), until}, std::move(ground.left_out), std::move(ground.mixes)};
}

std::optional<TreePlan> plan_of_tree(const OpenWorkbook& workbook, const Catalogue& catalogue, const Id<Tree>& tree) {
  std::set<std::string> carried_out;
  if (const auto stored = workbook.find(tree)) {
    for (const Repotting& one : stored->record.repottings)
      if (one.plan) carried_out.insert(one.plan->text);
  }
  std::optional<Id<RootMassPlan>> newest;
  for (const auto& stored : workbook.all_of(RecordKind::root_mass_plan)) {
    if (std::get<KeptRootMassPlan>(stored.record).tree == tree && !carried_out.contains(stored.ref.id)) newest = Id<RootMassPlan>{stored.ref.id};
  }
  return newest ? tree_plan(workbook, catalogue, *newest) : std::nullopt;
}

std::optional<TreePlan> tree_plan(const OpenWorkbook& workbook, const Catalogue& catalogue, const Id<RootMassPlan>& id) {
  const auto stored = workbook.find(RecordRef{RecordKind::root_mass_plan, id.text});
  if (!stored) return std::nullopt;
  const auto& kept = std::get<KeptRootMassPlan>(stored->record);
  const auto file = read_root_mass_plan(kept.plan, id.text, {&catalogue, {}});
  const auto answer = file ? std::optional(work_out(file->plan)) : std::nullopt;
  if (!answer || !*answer) return std::nullopt;
  TreePlan found{id, kept.mix, {}, {}, {}};
  for (const WorkedPlan& plan : (*answer)->plans) {
    found.fills.push_back(mixed_l(in_ml(plan.fill) / 1000));
    found.sphagnum.push_back(plan.sphagnum);
    found.pots.push_back(plan.fits ? pot_in_library(workbook, pot_of(file->plan, plan)) : std::nullopt);
  }
  return found;
}

DayTree day_tree_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const Stored<Tree>& tree) {
  DayTree row;
  row.tree = tree.id;
  if (const Repotting* last = stands_in(tree.record)) {
    row.mix = last->mix ? DayReader(workbook, catalogue).newest_of(*last->mix) : std::nullopt;
    row.container = last->container;
  }
  if (const auto plan = plan_of_tree(workbook, catalogue, tree.id); plan && !plan->fills.empty()) {
    if (plan->mix) row.mix = plan->mix;
    follow_plan(row, *plan, 0);
  }
  return row;
}

std::optional<PotVolume> sphagnum_of(const TreePlan& plan, std::size_t at) { return in_ml(plan.sphagnum[at]) > 0 ? std::optional(plan.sphagnum[at]) : std::nullopt; }

void follow_plan(DayTree& row, const TreePlan& plan, std::size_t at) {
  row.plan = plan.id;
  row.plan_name = std::string(1, static_cast<char>('A' + at));
  if (plan.pots[at]) row.container = plan.pots[at];
  row.planned = plan.fills[at];
  row.worse_plans.assign(plan.fills.begin() + static_cast<std::ptrdiff_t>(at) + 1, plan.fills.end());
  row.sphagnum = sphagnum_of(plan, at);
}

}  // namespace gritwright::desktop
