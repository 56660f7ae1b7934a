/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-6
 *~A:-6
 *~F:-4
 +:1
 +~ a:-5
 +~0:5
 +~<:-1
 +~=:-4
 +~A:-6
 +~F:-7
 +~W:-4
 .:6
 .~%:3
 .~0:3
 ::1
 :~ a:3
 :~ about:-5
 :~ all:7
 :~ as:-3
 :~ do:-1
 :~ does:-2
 :~ g:-2
 :~ goggl:-6
 :~ good:-7
 :~ half:8
 :~ i'd:3
 :~ i:4
 :~ in:3
 :~ is:-8
 :~ it:2
 :~ its:-1
 :~ ive:2
 :~ kitchen:1
 :~ me:-8
 :~ melt:-11
 :~ my:2
 :~ no:2
 :~ none:9
 :~ re:-3
 :~ soap:-6
 :~ the:-1
 :~ too:2
 :~ what:3
 :~ why:-4
 :~ winter:-1
 :~ yes:3
 :~%:-5
 :~0:-5
 :~<:-3
 :~=:-5
 :~>:-8
 :~A:-1
 :~L:-2
 :~N:2
 :~S:-5
 :~T:-4
 :~W:-3
 :~X:-2
 :~b:-6
 :~e:-1
 :~l:-8
 :~t:-5
 :~v:-6
 :~w:4
 =:-2
 =~ =:-5
 =~0:-5
 =~=:-6
 =~>:-2
 =~e:2
 =~l:-7
 ?:-4
 a:-2
 about:-3
 about~ a:5
 about~ an:-5
 about~ it:-3
 about~ right:-2
 about~ superfat:-8
 about~ the:2
 about~ to:-4
 about~%:-2
 about~0:-2
 about~<:4
 about~>:-5
 about~F:-6
 about~b:4
 about~d:-2
 about~t:-7
 about~v:2
 about~w:3
 above:6
 above~ is:3
 above~d:-7
 abt:-7
 accident:4
 accord:6
 accord~ to:6
 account:6
 acros:4
 acros~ the:6
 actual:9
 actual~N:5
 add:-1
 added:8
 added~ a:1
 added~ it:2
 added~ the:1
 added~<:-7
 added~=:-10
 added~v:7
 added~w:3
 adds:-9
 adds~ up:-7
 add~ a:2
 add~ it:-7
 add~ the:-5
 add~ to:2
 add~ up:-1
 add~<:-5
 add~=:-4
 add~F:3
 add~w:-6
 advice:2
 afresh:-6
 afternoon:2
 afterward:-1
 after~ a:-1
 after~ an:1
 after~ cook:2
 after~ cure:-2
 after~ i:4
 after~ it:7
 after~ last:1
 after~ pour:4
 after~ strain:4
 after~ that:-5
 after~ the:-1
 after~ this:-9
 after~0:-5
 after~t:-5
 again:-2
 against:3
 against~ the:4
 again~ ::3
 again~ ?:2
 again~ after:-2
 again~ and:-9
 again~ for:-7
 again~ with:7
 age:-10
 ages:-3
 ages~ to:-4
 ago:-11
 ago~ and:-4
 agre:-5
 agree:-8
 agree~ with:-3
 ahead:1
 aim:6
 aim~ for:6
 air:-2
 air~ cupboard:-1
 aisle:4
 aleppo:-5
 alike:6
 alkali:-7
 all:2
 allergen:-6
 allergic:9
 allergic~ to:-8
 allergy:6
 allotment:-5
 allow:-6
 all~ ::-4
 all~ ?:-3
 all~ and:5
 all~ but:9
 all~ by:-7
 all~ day:-6
 all~ down:9
 all~ fats:-8
 all~ first:1
 all~ g:-10
 all~ good:-7
 all~ grams:-8
 all~ i:4
 all~ in:-2
 all~ is:-7
 all~ my:-5
 all~ of:-2
 all~ on:-6
 all~ over:-4
 all~ right:-10
 all~ that:-3
 all~ the:-5
 all~ there:4
 all~ told:-2
 all~ up:-5
 all~ week:2
 all~ weigh:-3
 all~ went:-1
 all~0:1
 all~F:4
 all~L:-2
 all~b:-2
 all~e:9
 almost:1
 alone:-1
 along:9
 along~ with:6
 already:8
 already~ dissolv:6
 already~ in:4
 already~ put:9
 alright:-5
 alright~ ?:-2
 also:4
 also~w:5
 although:3
 altogether:-8
 aluminium:-2
 alway:-3
 alway~ did:-5
 alway~ said:-6
 alway~ with:5
 am:2
 american:-9
 ammonia:-6
 amount:3
 amount~ ?:-4
 amount~ g:-3
 amount~ of:-1
 am~ a:-5
 am~ from:-8
 an:-2
 and~ a:-3
 and~ about:-4
 and~ add:-7
 and~ added:-1
 and~ after:-2
 and~ again:2
 and~ all:6
 and~ an:-6
 and~ another:-8
 and~ at:-7
 and~ bang:-1
 and~ blend:-5
 and~ both:-1
 and~ by:1
 and~ call:2
 and~ came:-6
 and~ clear:-3
 and~ cool:3
 and~ cut:-1
 and~ did:-2
 and~ do:1
 and~ does:-3
 and~ dont:-6
 and~ even:2
 and~ everyth:-2
 and~ fill:3
 and~ for:2
 and~ forgot:-5
 and~ found:4
 and~ gave:3
 and~ give:3
 and~ glov:-1
 and~ go:-2
 and~ goes:-2
 and~ goggl:-3
 and~ got:-11
 and~ had:-1
 and~ half:-8
 and~ hard:-6
 and~ has:1
 and~ have:-4
 and~ he:3
 and~ her:-6
 and~ his:-7
 and~ honest:-7
 and~ how:-7
 and~ i'd:-2
 and~ i:6
 and~ if:3
 and~ im:-1
 and~ in:-3
 and~ into:3
 and~ is:1
 and~ it:-3
 and~ itll:-5
 and~ its:-3
 and~ keep:-6
 and~ kept:1
 and~ last:-3
 and~ left:3
 and~ let:-5
 and~ lost:-7
 and~ me:-2
 and~ melt:-6
 and~ mine:1
 and~ mixed:-2
 and~ neither:3
 and~ never:-2
 and~ no:1
 and~ nobody:-2
 and~ none:5
 and~ not:-2
 and~ noth:-3
 and~ now:3
 and~ of:3
 and~ off:-5
 and~ once:-2
 and~ only:2
 and~ pour:3
 and~ put:4
 and~ said:-6
 and~ says:2
 and~ see:-5
 and~ she:-4
 and~ since:2
 and~ smell:-2
 and~ so:2
 and~ soap:-3
 and~ some:2
 and~ someth:7
 and~ sprinkle:-2
 and~ start:-6
 and~ stay:-5
 and~ still:-2
 and~ stir:2
 and~ stirr:-7
 and~ straight:-8
 and~ strain:-4
 and~ stuck:7
 and~ swear:-7
 and~ tell:-4
 and~ that:5
 and~ thats:-1
 and~ the:-2
 and~ then:4
 and~ ther:5
 and~ there:4
 and~ they:-6
 and~ this:5
 and~ those:1
 and~ tipp:8
 and~ to:-5
 and~ together:1
 and~ took:11
 and~ turn:-4
 and~ use:2
 and~ used:3
 and~ wait:-4
 and~ want:-7
 and~ wants:-5
 and~ warm:-1
 and~ was:2
 and~ we:1
 and~ went:-5
 and~ what:1
 and~ when:-2
 and~ whether:-6
 and~ white:-6
 and~ will:-2
 and~ with:-4
 and~ would:-8
 and~ yes:-2
 and~ you:-1
 and~%:-3
 and~0:1
 and~<:1
 and~=:-4
 and~A:-3
 and~B:-1
 and~F:-4
 and~L:-6
 and~N:7
 and~S:-4
 and~W:1
 and~X:1
 and~b:-10
 and~e:-2
 and~l:-6
 and~t:-7
 and~v:5
 and~w:-1
 another:3
 another~ day:-6
 another~0:10
 another~<:6
 another~t:-5
 another~v:-1
 another~w:-8
 answer:-5
 answer~ ::-6
 answer~ is:-2
 answer~ the:3
 any:-2
 anybody:1
 anyhow:-3
 anyone:-7
 anyone~ know:1
 anyone~ tried:-2
 anyth:-7
 anyth~ in:-3
 anyth~ off:-4
 anyth~ wrong:-3
 anyway:-6
 anywhere~ near:-6
 any~A:-3
 any~F:1
 any~S:-8
 an~ earlier:-8
 an~ envelope:-6
 an~ extra:4
 an~ eye:-2
 an~ hour:-7
 an~ old:-5
 an~ older:-1
 an~I:3
 an~L:3
 apart:-10
 app:-1
 approx:2
 april:-2
 apron:-6
 are:-1
 are~ dry:5
 are~ for:2
 are~ from:-1
 are~ full:-2
 are~ in:-7
 are~ no:-5
 are~ not:-9
 are~ right:-4
 are~ still:-10
 are~ the:-3
 are~ what:-1
 are~0:1
 are~=:-4
 are~F:-3
 argu:-8
 arithmetic:-7
 arm:-8
 around:-4
 around~ the:-5
 around~0:-4
 around~d:-3
 arriv:-7
 as:3
 ash:-8
 ashes:-7
 ash~ and:-4
 ash~ on:-8
 aside:-5
 ask:-4
 asked:-7
 asked~ about:-5
 asked~ for:-2
 asked~ if:-3
 asked~ whether:-5
 asks:-9
 ask~ ::-3
 ask~ about:-6
 ask~ for:-5
 ask~ me:-1
 ask~ you:-6
 asleep:-6
 assay:8
 as~ a:1
 as~ above:1
 as~ alway:5
 as~ before:6
 as~ ever:-7
 as~ far:-4
 as~ i:5
 as~ if:4
 as~ in:-2
 as~ is:6
 as~ it:-4
 as~ list:-4
 as~ long:-10
 as~ much:2
 as~ my:-1
 as~ on:-6
 as~ print:5
 as~ snow:-4
 as~ the:2
 as~ well:3
 as~ written:-4
 as~ you:-9
 as~0:2
 as~A:3
 as~F:-2
 as~I:-8
 as~L:-3
 as~X:-5
 at:-2
 ate:6
 attempt:-6
 attempt~0:-4
 attic:-3
 at~ a:-8
 at~ about:1
 at~ all:-3
 at~ around:-4
 at~ christma:-3
 at~ church:-7
 at~ day:-9
 at~ easter:-6
 at~ first:-7
 at~ half:-9
 at~ home:2
 at~ hour:1
 at~ it:4
 at~ least:-3
 at~ light:2
 at~ liquid:-3
 at~ me:3
 at~ minute:-2
 at~ my:-3
 at~ once:-5
 at~ our:-6
 at~ room:-5
 at~ rough:-1
 at~ school:-6
 at~ that:1
 at~ thin:-6
 at~ this:-6
 at~ trace:6
 at~ week:-6
 at~%:4
 at~0:-4
 at~<:7
 at~=:-8
 at~b:3
 at~d:-4
 at~e:3
 at~t:-10
 at~w:-4
 august:3
 aunt:-5
 aunti:-5
 auntie:5
 aunts:3
 aunt~ in:-7
 autumn:-9
 average:-4
 away:-2
 away~ and:2
 a~ ::-8
 a~ bad:-8
 a~ bag:5
 a~ bar:-10
 a~ batch:-8
 a~ beginner:-3
 a~ big:-1
 a~ bigger:-2
 a~ bit:-2
 a~ blanket:-3
 a~ blend:7
 a~ bottle:1
 a~ bowl:-8
 a~ box:-7
 a~ brick:-1
 a~ bucket:-5
 a~ can:3
 a~ candle:-8
 a~ carton:-1
 a~ castile:1
 a~ cheese:-7
 a~ chip:-7
 a~ class:-6
 a~ clean:2
 a~ cold:-6
 a~ corner:-9
 a~ cow:1
 a~ crisp:-4
 a~ crumb:-7
 a~ crust:5
 a~ customer:-5
 a~ dark:-6
 a~ day:-2
 a~ different:-3
 a~ drawer:-7
 a~ dream:-4
 a~ drop:3
 a~ dry:-6
 a~ face:-8
 a~ fair:4
 a~ fami:-5
 a~ fan:-3
 a~ few:5
 a~ fifth:3
 a~ finger:-7
 a~ fresh:-2
 a~ friend:-2
 a~ full:-2
 a~ glass:2
 a~ glug:4
 a~ good:10
 a~ half:1
 a~ handful:-2
 a~ heap:9
 a~ hole:-4
 a~ hurry:-6
 a~ jam:-8
 a~ jar:1
 a~ jug:-1
 a~ kitchen:-1
 a~ knob:6
 a~ ladle:3
 a~ lady:-4
 a~ library:-4
 a~ lid:-4
 a~ lidd:-2
 a~ light:-4
 a~ list:2
 a~ little:3
 a~ loaf:-4
 a~ lot:-5
 a~ lump:6
 a~ man:-3
 a~ milk:-2
 a~ minute:-4
 a~ mix:7
 a~ month:-10
 a~ mould:-5
 a~ mug:7
 a~ new:-7
 a~ nice:-2
 a~ night:-5
 a~ number:-1
 a~ page:-7
 a~ paper:-5
 a~ pdf:-3
 a~ photo:-7
 a~ pinch:-2
 a~ plain:-8
 a~ pot:1
 a~ proper:-6
 a~ puddle:5
 a~ quarter:6
 a~ question:-3
 a~ reader:-6
 a~ ready:3
 a~ recipe:-2
 a~ rock:-5
 a~ round:-1
 a~ row:-8
 a~ scale:-8
 a~ second:-4
 a~ shade:-2
 a~ shoe:-3
 a~ shoebox:-3
 a~ silicone:-5
 a~ sink:-6
 a~ skin:-3
 a~ skull:-6
 a~ slip:2
 a~ slow:-6
 a~ small:1
 a~ smaller:-3
 a~ soap:-7
 a~ soft:-6
 a~ softer:-5
 a~ spatula:-6
 a~ spill:-1
 a~ splash:5
 a~ spoon:-4
 a~ spoonful:-2
 a~ steel:-5
 a~ stick:2
 a~ stir:-3
 a~ superfat:2
 a~ tenth:5
 a~ thermometer:-6
 a~ thin:-3
 a~ thing:-6
 a~ third:3
 a~ time:-6
 a~ tin:1
 a~ tiny:3
 a~ touch:-3
 a~ towel:-1
 a~ tray:-6
 a~ treat:-6
 a~ tub:-6
 a~ twentieth:4
 a~ typo:2
 a~ very:-7
 a~ video:-3
 a~ volcano:-3
 a~ warm:-4
 a~ water:-2
 a~ week:-7
 a~ wet:1
 a~ white:-2
 a~ whole:2
 a~ wire:-2
 a~ woman:-6
 a~ year:-7
 a~ zap:-4
 a~%:2
 a~0:4
 a~<:6
 a~=:-7
 a~>:2
 a~A:-4
 a~F:-2
 a~K:-1
 a~L:-4
 a~N:9
 a~S:1
 a~X:2
 a~b:3
 a~e:-8
 a~r:3
 a~t:-5
 a~v:-4
 a~w:4
 b:-2
 babcia:-5
 babi:-6
 baby:1
 back:-3
 background:-4
 back~ ::-6
 back~ a:1
 back~ and:4
 back~ for:2
 back~ in:-7
 back~ of:-4
 back~ on:-7
 back~ out:4
 back~ till:9
 back~ to:-7
 back~ up:6
 bacon:-6
 bad:1
 badly:-1
 bag:5
 bags:-5
 bag~ of:6
 bag~ says:-1
 bak:-7
 bak~ paper:-7
 balanc:-3
 balance:3
 balanc~ ?:-3
 balcony:2
 balls:-6
 balm:-5
 bang:-9
 bang~ it:-4
 bar:-5
 bare:-7
 bare~ got:-3
 barn:-5
 barrel:-5
 bars:-8
 bars~ +:-7
 bars~ ::-4
 bars~ about:-1
 bars~ and:-5
 bars~ are:-4
 bars~ at:-2
 bars~ come:-4
 bars~ each:-6
 bars~ for:-6
 bars~ from:-6
 bars~ i:-2
 bars~ in:-5
 bars~ of:-7
 bars~ on:-5
 bars~ out:-8
 bars~ so:-4
 bars~ to:-5
 bars~ went:-8
 bars~ were:2
 bars~ with:-8
 bars~0:-7
 bars~t:-4
 bars~w:-5
 bar~ ::-2
 bar~ ?:-6
 bar~ all:-4
 bar~ and:-4
 bar~ at:-4
 bar~ for:-7
 bar~ from:-7
 bar~ i:2
 bar~ in:-3
 bar~ is:2
 bar~ no:-2
 bar~ of:-8
 bar~ since:-2
 bar~ so:3
 bar~ with:3
 bar~0:-5
 basic:-4
 bastille:-7
 batch:-4
 batch~ ::-4
 batch~ and:-7
 batch~ but:3
 batch~ ever:2
 batch~ had:-3
 batch~ i:4
 batch~ in:5
 batch~ is:2
 batch~ log:-3
 batch~ no:-3
 batch~ of:-5
 batch~ record:-3
 batch~ sheet:-6
 batch~ that:-1
 batch~ was:-5
 batch~ with:-4
 batch~0:-8
 bath:-8
 bathroom:5
 bathroom~ scale:7
 batter:-3
 batteri:-4
 battery:4
 battery~ died:5
 bazaar:-3
 bc:8
 bc~ i:3
 be:3
 beach:-5
 beads:7
 beaker:5
 bear:-6
 beard:-3
 beat:-4
 became:3
 became~0:11
 because~ a:-4
 because~ he:-8
 because~ i:-3
 because~ it:7
 because~ its:-5
 because~ last:1
 because~ my:3
 because~ of:-3
 because~ she:-3
 because~ thats:1
 because~ the:3
 because~F:-6
 become:-1
 bed:-7
 bee:-6
 beech:-2
 beef:-6
 beef~=:-5
 beekeeper:-8
 been:3
 been~ in:1
 been~ mak:-7
 been~ on:-5
 been~ open:7
 been~ stand:4
 been~ told:-5
 been~t:-1
 bees:-5
 before:-2
 beforehand:-5
 before~ and:3
 before~ anyone:-7
 before~ i:-3
 before~ it:2
 before~ me:3
 before~ pour:6
 before~ saturday:-6
 before~ so:-9
 before~ that:-7
 before~ the:1
 before~ they:-6
 before~ this:-9
 before~ we:-3
 before~ weigh:-8
 before~ with:-6
 before~ you:-12
 before~t:-5
 began:-6
 begin:-6
 beginn:-1
 beginner':-7
 beginner:-10
 behav:-7
 behind:-1
 behind~ the:3
 beige:-6
 being:-2
 believe:-1
 bell:1
 belong:-2
 belong~ to:2
 below:-4
 below~ the:-3
 below~0:2
 below~d:-5
 bench:3
 besid:5
 beside:5
 beside~ it:3
 best:-11
 best~ before:-7
 bet:-4
 better:-2
 better~ than:2
 between:-2
 between~ the:6
 between~0:8
 be~ ?:-7
 be~ a:6
 be~ about:-6
 be~ bother:2
 be~ clear:-5
 be~ cut:-3
 be~ exact:6
 be~ for:2
 be~ gentle:-3
 be~ honest:-2
 be~ hot:-4
 be~ in:-7
 be~ mild:-6
 be~ ok:-3
 be~ on:4
 be~ patient:-8
 be~ right:2
 be~ sure:-2
 be~ the:-4
 be~ too:-6
 be~%:-8
 be~0:5
 be~N:8
 be~b:8
 be~e:10
 be~w:4
 bicycle:-6
 big:2
 bigger:2
 bigger~ pot:-4
 bigger~ than:5
 big~ batch:-7
 big~ kettle:6
 big~ one:3
 big~ pot:-4
 bin:-3
 binn:3
 bin~ it:-4
 birds:-3
 birthday:-4
 biscuit:-6
 bit:1
 bite:-3
 bites:-3
 bits~ of:1
 bit~ and:-1
 bit~ at:-3
 bit~ by:-3
 bit~ greasy:-2
 bit~ less:-1
 bit~ like:-5
 bit~ more:3
 bit~ of:2
 bit~ on:-6
 bit~ over:-7
 bit~ so:-3
 bit~ soft:-2
 bit~ the:1
 bit~ under:-1
 black:-3
 blame:-9
 blame~ the:-6
 blanket:-7
 blender:-3
 blender~ and:-4
 blender~ died:-4
 blender~t:-5
 blend~ and:-6
 blend~ at:-1
 blend~ for:-2
 blend~ pour:-2
 blend~ to:-2
 blend~ with:7
 blend~t:-5
 blind:4
 blob:-1
 block:1
 blog:1
 blog~ i:-3
 blood:-6
 blue:-2
 board:4
 boat:4
 boil:-1
 boiler:-7
 boil~ down:-2
 boil~ flat:5
 boil~ in:7
 boil~ it:-7
 boil~ off:5
 boil~ over:5
 boil~ the:-2
 bonjour:-4
 bonsoir:-4
 book:-4
 book~ ::-2
 book~ says:-6
 borrow:-3
 boss:-1
 both:-1
 bother:-4
 bother~ to:2
 bother~ with:3
 both~ are:-7
 both~ lyes:-2
 both~ of:1
 both~ times:-6
 both~ units:-4
 both~ were:-6
 bottl:-4
 bottle:4
 bottle~ and:7
 bottle~ before:-5
 bottle~ gave:3
 bottle~ in:-7
 bottle~ is:4
 bottle~ of:-4
 bottle~ on:-4
 bottle~ ran:-1
 bottle~ said:6
 bottle~ says:6
 bottle~ was:14
 bottle~ with:-2
 bottl~ of:-5
 bought:-2
 bought~ a:-6
 bought~ the:-7
 bought~0:-8
 bought~>:-7
 bowl:1
 bowls:1
 bowl~ and:-3
 bowl~ in:-11
 bowl~ is:-4
 bowl~ of:-1
 bowl~ on:6
 bowl~ with:-1
 bowl~w:3
 box:-1
 boxes:-5
 box~ and:-3
 box~ lined:-3
 box~t:-1
 boy:-2
 boyfriend:-3
 boys:2
 brand:-5
 brave:-2
 bread:-3
 break:-9
 breakfast:-2
 breathe:-5
 brick:-1
 brim:-2
 bring:-11
 bring~ it:-5
 bring~ the:-8
 broke:-2
 broken:4
 brother:2
 brother~ in:-7
 brought:9
 brown:-8
 brown~ paper:-4
 brush:-4
 btw:3
 bubbl:-6
 bubble:-5
 bucket:-4
 bucket~ of:-7
 bucket~ so:-5
 bucket~ with:-7
 burn:-6
 burnt:-2
 burst:-3
 burst~ of:-2
 bus:-2
 but:-1
 butcher:-3
 butcher~ gave:-7
 button:-4
 but~ he:2
 but~ here:-5
 but~ i'd:-4
 but~ i:1
 but~ im:-7
 but~ is:-7
 but~ it:-4
 but~ its:1
 but~ ive:-1
 but~ my:-1
 but~ no:2
 but~ not:-5
 but~ now:-3
 but~ only:-8
 but~ she:-5
 but~ that:-6
 but~ thats:-5
 but~ the:6
 but~ then:3
 but~ there:-4
 but~ they:-4
 but~ this:1
 but~ those:-7
 but~0:2
 but~F:-7
 buy:-2
 buy~ the:-1
 by:2
 by~ a:8
 by~ accident:4
 by~ bit:-3
 by~ easter:-5
 by~ eye:7
 by~ feel:-1
 by~ hand:-8
 by~ it:-6
 by~ itself:3
 by~ me:-7
 by~ mistake:6
 by~ my:2
 by~ noon:-3
 by~ spoon:-7
 by~ the:2
 by~ then:-5
 by~ today:-4
 by~ volume:2
 by~ week:-5
 by~ weight:-3
 by~0:1
 by~<:7
 by~N:-5
 by~b:-3
 by~t:-7
 b~ ::5
 b~A:-4
 b~F:-7
 c:-5
 cake:-1
 cakes:-5
 calculat:-1
 calculate:3
 calculator:-7
 call:2
 calls:-10
 calls~ it:-7
 call~ for:-1
 call~ it:6
 call~ that:5
 call~ the:-2
 call~F:3
 came~ back:4
 came~ in:-3
 came~ out:-1
 came~ to:9
 came~ up:3
 camp:-1
 can:-1
 candl:-6
 candle:-1
 candle~B:-2
 candl~ and:-6
 cannot:-4
 cans:-2
 cant:3
 cant~ be:-1
 cant~ find:3
 cant~ get:-5
 cant~ remember:5
 cant~ say:-2
 cant~ stand:5
 can~ and:1
 can~ be:-3
 can~ bear:-5
 can~ is:4
 can~ of:5
 can~ see:1
 can~ somebody:-6
 can~ someone:4
 can~ stand:-6
 can~ still:-5
 can~ tell:-3
 can~ the:-2
 can~ u:1
 can~ use:-5
 can~ you:2
 cap:-2
 capping:-8
 car:-8
 caramel:-6
 carbonate:7
 card:1
 cardboard:2
 card~ is:3
 card~ no:-4
 care:2
 caretaker:-7
 carpet:-3
 carri:5
 carri~ it:3
 carri~ on:5
 carry:-6
 carton:-3
 cast:-7
 castile:-7
 cat:-2
 cat~ got:4
 cat~ had:3
 cat~ has:-6
 cat~ is:-4
 caught:1
 cauldron:-2
 caviti:-5
 ceil:-1
 cell:1
 cellar:-11
 certifi:-9
 certificate:6
 chair:-6
 chang:-2
 change:-3
 change~ the:-5
 chang~ my:5
 chang~ the:-8
 charg:-4
 charge:-4
 chat:-3
 cheap:-8
 cheaper:-5
 cheaper~ than:-7
 check:-5
 check~ ?:-1
 check~ before:1
 check~ by:-8
 check~ it:-8
 check~ me:-2
 check~ my:-7
 check~ out:-5
 check~ please:-5
 check~ pls:-4
 check~ that:-6
 check~ the:-5
 check~ this:-4
 check~A:-5
 cheese:-2
 cheese~ wire:-7
 chemist:-7
 chemistry:-3
 chemistry~ teacher:4
 child:-7
 children:-4
 chill:-6
 chip:2
 chips:4
 chisel:-6
 choir:1
 choose:-4
 chopp:-3
 christma:-7
 christma~0:-6
 chuck:3
 chuck~ in:7
 church:-9
 claim:-2
 clarity:-5
 class:-2
 class~ ::-5
 clean:-5
 clean~ the:-5
 clean~F:-5
 clear:-7
 clear~ after:-2
 clear~ and:-6
 clear~ as:-9
 clear~ at:-8
 clear~ in:-5
 climb:-9
 climb~ out:-3
 climb~ to:-5
 cling:-4
 cling~ film:-3
 cling~ to:4
 clock:-5
 clos:-2
 close:-3
 close~ to:-7
 cloth:-5
 cloud:3
 cloudy:1
 cloudy~ for:-4
 club:-2
 clubs:-6
 clump:2
 coat:-6
 coins:2
 cold:-7
 cold~ from:-5
 cold~ press:-8
 cold~ proces:-7
 cold~L:6
 cold~W:-5
 colleague:-6
 colour:-9
 column:-6
 com:5
 combin:2
 combine:-2
 combine~ blend:-2
 comes~ as:1
 comes~ by:1
 comes~ from:-4
 comes~ in:2
 comes~ out:3
 comes~ to:1
 come~ back:-7
 come~ down:-4
 come~ off:-2
 come~ out:3
 come~ to:1
 comma:2
 comma~ is:-7
 comment:-7
 compar:-4
 compare:-9
 compar~ with:2
 complain:-5
 complaint:-7
 complain~ about:-4
 complete:2
 computer:-3
 confetti:-5
 confirm:-8
 confirm~ the:-6
 contain:7
 convert:-9
 cook:2
 cooker:-2
 cooker~ ::-3
 cooker~ before:3
 cooker~ is:-5
 cooker~ on:-3
 cooks:-2
 cook~ ::-6
 cook~ ?:-7
 cook~ about:2
 cook~ and:-2
 cook~ at:-4
 cook~ for:-4
 cook~ i:-3
 cook~ in:-7
 cook~ is:4
 cook~ it:1
 cook~ on:-3
 cook~ once:-3
 cook~ part:-6
 cook~ so:6
 cook~ the:-6
 cook~ until:-1
 cook~ was:-11
 cook~ when:-6
 cook~ with:1
 cook~=:-1
 cook~F:-4
 cook~t:-5
 cool:-6
 cools:-9
 cool~ down:-1
 cool~ i:-2
 cool~ it:-6
 cool~ the:-9
 cool~ to:-1
 cool~ under:-4
 copi:2
 copi~ from:3
 copi~ it:-2
 copi~ off:2
 copi~ out:-6
 copi~ straight:-7
 copi~ the:1
 copy:3
 cork:-8
 corner:-12
 correct:1
 correction:8
 correct~ or:-3
 cos:6
 cost:-6
 costs:-15
 costs~ me:-2
 costs~0:-5
 costs~t:-5
 cost~ ::-7
 cost~ eur:-2
 cost~ me:-4
 cost~ per:-1
 cost~ sheet:-4
 cost~0:-6
 cost~t:-2
 could:-2
 couldnt:6
 couldnt~ be:6
 couldnt~ get:7
 could~ be:9
 could~ have:-6
 could~ not:6
 could~ somebody:1
 could~ someone:-5
 could~ the:-7
 could~ you:-1
 council:-3
 count:1
 counter:4
 country:3
 county:-4
 count~ in:-2
 count~ it:5
 count~ the:-2
 count~ with:6
 course:-6
 course~ in:-4
 cousin:-2
 cousin~ so:1
 cover:-6
 cover~ it:-4
 cover~ with:-6
 cow:2
 cows:-7
 cp:-5
 crack:-2
 crackl:2
 crackling:2
 crack~ on:-5
 craft:1
 crate:-8
 creamy:-6
 cried:-7
 crisp:-5
 crisp~ tube:-4
 crock:-3
 crockpot:-3
 crock~ pot:1
 cross:-1
 crumb:-2
 crumbl:-7
 crumble:-5
 crumb~ and:6
 crumb~ at:3
 crush:-6
 crust:8
 crystal:-3
 cubes:-6
 cubes~ and:-3
 cubes~ of:1
 cubes~ the:-5
 cubes~w:-6
 cup:2
 cupboard~ and:2
 cupcake:-8
 cups:-4
 cup~ and:-8
 cup~ of:9
 cup~ weigh:-4
 cup~ with:-6
 cur:-6
 cure:-9
 cured:-6
 cure~ ::-2
 cure~ for:-4
 cure~ till:-2
 cure~ until:-1
 cure~t:-1
 curry:-6
 custard:-6
 customer:-9
 cuts:-6
 cutt:-4
 cutter:-6
 cut~ ::-5
 cut~ after:-3
 cut~ at:-7
 cut~ in:-3
 cut~ into:-7
 cut~ it:2
 cut~ next:-2
 cut~ off:-2
 cut~ on:-4
 cut~ the:6
 cut~ too:-7
 cut~ with:-6
 cut~0:-5
 cut~b:-5
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-2
 dads:-2
 dads~t:-2
 dag:-2
 dag~ ::-1
 dairy:5
 damp:5
 dare:2
 dark:-11
 das:-8
 date:-7
 dates:-6
 date~ ::-2
 date~t:-4
 daughter':-9
 daughter:2
 daughter~ who:-5
 day:-2
 days:-5
 day~ and:-3
 day~ at:-5
 day~ before:3
 day~ i:-4
 day~ it:-5
 day~ so:2
 day~ then:-5
 day~0:-4
 day~t:-6
 de:-5
 dead:-4
 deal:7
 dear:2
 dear~ all:3
 dear~ group:-4
 december:-3
 decent:-6
 decid:-1
 decimal:-7
 deep:1
 degre:-7
 demonstration:1
 dent:-9
 deodoris:-7
 diary:-4
 dictat:3
 did:3
 didnt:4
 didnt~ weigh:6
 did~ and:1
 did~ for:-1
 did~ i:-6
 did~ in:-11
 did~ it:-1
 did~ my:-1
 did~ not:1
 did~ the:6
 did~ you:-9
 did~0:1
 did~=:-3
 died:1
 died~ at:3
 difference:-5
 different:-9
 digital:-8
 dilut:-5
 dilute:-9
 dilution:3
 dinner:3
 disaster:-9
 discount:2
 dish~ soap:5
 display:4
 dissolv:5
 dissolve:3
 dissolve~ the:5
 dissolve~=:-7
 dissolv~ together:-1
 dissolv~<:2
 dissolv~=:-5
 do:-4
 doctor:-8
 does:-5
 doesnt:-2
 doesnt~ mind:-6
 doesnt~ smell:-3
 does~ anybody:-4
 does~ anyone:2
 does~ her:-4
 does~ it:-4
 does~ my:-7
 does~ not:-3
 does~ that:1
 does~ the:-4
 does~ this:-1
 does~%:-7
 does~F:-5
 does~b:-6
 does~w:1
 dog:1
 dogs:-6
 dog~ got:9
 doing:3
 doing~ it:-5
 doing~ the:2
 doing~ this:3
 done:-5
 done~ it:-1
 dont:-3
 dont~ ask:5
 dont~ be:-7
 dont~ get:4
 dont~ know:7
 dont~ laugh:-1
 dont~ panic:-5
 dont~ trust:-5
 dont~ want:-8
 door:-3
 doorbell:2
 doors:-8
 dos:-2
 dose:7
 dose~ of:8
 dot:-5
 doubl:10
 double:-8
 double~ boiler:-6
 double~ check:-2
 doubt:-5
 down:2
 down~ and:-3
 down~ by:6
 down~ the:-1
 down~ with:3
 do~ ?:-5
 do~ a:-6
 do~ for:-5
 do~ i:3
 do~ in:-10
 do~ it:-1
 do~ not:-6
 do~ the:-5
 do~ this:-6
 do~ we:-5
 do~ with:-7
 do~ you:-3
 do~F:-2
 draft:-8
 drag:-8
 drain:5
 drama:-3
 drank:6
 draw:1
 drawer:-3
 drawn:3
 dream:-4
 drew:-6
 dried:-2
 drink:-4
 drip:-7
 drips:-9
 dropp:4
 dropp~ below:-4
 dropp~ the:2
 drops:-1
 drops~ of:2
 drop~ of:2
 drop~ the:-6
 drop~ to:-3
 drove:-3
 drown:-6
 drum:6
 dry:3
 dry~ cup:-4
 dry~ hands:4
 dry~ skin:-7
 dry~ so:3
 dry~ until:3
 duck:-8
 dump:-4
 dust:4
 e:-5
 each:-1
 each~ and:-5
 each~ of:-4
 each~ time:-1
 earlier:-5
 early:-9
 easier:-6
 easter:-5
 easy:-7
 eat:-1
 eats:-5
 eczema:4
 edge:-2
 edges:-2
 edit:2
 edition:2
 edit~ ::4
 either:4
 elbow:-6
 else:1
 else~ no:-3
 empti:4
 empty:-2
 empty~ and:-4
 emulsion:-7
 enamel:-8
 enamel~ pot:-7
 end:4
 ended:7
 ended~ up:-2
 ends:-9
 end~ ?:-5
 end~ after:2
 end~ and:3
 end~ is:-10
 end~ it:8
 end~ of:-2
 end~ piece:-6
 english:-3
 english~ i:-5
 english~ is:-5
 enough:-2
 enough~ ?:-4
 enough~ for:-4
 enough~ or:-4
 enough~ to:-3
 enough~A:1
 entire:-6
 entry:-2
 envelope:-5
 equal~ parts:1
 equal~ weight:-5
 error:-3
 eur:-4
 euro:-5
 even:-7
 evening:-4
 even~ all:-5
 even~ class:-5
 even~ in:-5
 ever:-10
 every:-5
 everybody:-9
 everyday:-4
 everyday~ bar:-4
 everyone:-6
 everyone~ who:2
 everyth:4
 everyth~ and:-5
 everyth~ at:2
 everyth~ else:2
 everyth~ in:-4
 everyth~ is:3
 everyth~ on:1
 everyth~ was:-3
 everywhere:-5
 every~ one:5
 every~ time:1
 every~t:-6
 ex:-6
 exact:-7
 exact~ as:-7
 exact~ one:-1
 exam:-6
 except:8
 except~ for:-1
 except~ that:-4
 except~ the:4
 exces:2
 excuse:-6
 excuse~ my:-3
 excuse~ the:-7
 expect:-4
 expensive:-4
 export:-4
 export~ from:-4
 extra:6
 extra~ fat:7
 extra~ virgin:-5
 extra~A:-2
 extra~F:-4
 eye:6
 eyebrow:-7
 eyes:-2
 eye~ over:-2
 f:-6
 face:-7
 faces:-8
 facial:2
 facial~ bar:-4
 fact:5
 faded:-6
 fades:-6
 fail:4
 faint:-7
 faint~ of:-5
 fair:4
 fair~ ::-5
 falls:-6
 false:-6
 false~ trace:-6
 fami:-2
 famili:-7
 fan:-4
 fancy:5
 far:-3
 farm:1
 farm~ shop:2
 far~ as:-4
 far~ too:2
 fast:-6
 faster:1
 faster~ than:-4
 fat:5
 father~ in:4
 fats~ ::-4
 fats~ ?:-4
 fats~ and:-1
 fats~ are:-4
 fats~ at:-5
 fats~ in:-7
 fats~ melt:-1
 fats~ or:-5
 fats~ were:-5
 fat~ ::1
 fat~ ?:-8
 fat~ and:2
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-2
 fat~ is:1
 fat~ left:4
 fat~ of:-7
 fat~ so:-2
 fat~ was:-6
 fault:-8
 favour:1
 february:-8
 feed:1
 feed~ store:3
 feel:1
 feels:-7
 feels~ a:-5
 feels~ like:-7
 feel~ the:-1
 feet:1
 fell:-2
 fell~ on:1
 felt:-2
 felt~ like:-2
 fence:-5
 fete:2
 few:6
 field:-8
 fifth:1
 fifth~ of:9
 fig:-7
 fight:4
 figur:3
 figure:7
 file:1
 files:-4
 fill:2
 fills:-7
 fills~ my:-8
 fills~ the:-1
 fills~0:-3
 fill~ in:-4
 fill~ it:-1
 fill~ the:4
 fill~ to:2
 fill~ up:5
 fill~0:2
 film:-7
 film~ on:-3
 filter:-3
 final:-2
 find:8
 finds:-5
 find~ the:3
 find~F:2
 fine:-5
 finer:-5
 fine~ ?:-5
 fine~ and:-3
 fine~ but:-4
 fine~ for:-6
 fine~ or:-4
 finger:2
 finish:3
 finish~ paste:-6
 finish~ the:-1
 finish~ with:6
 fire:-10
 firm:5
 firmer:-1
 first:-5
 first~ and:-3
 first~ attempt:-8
 first~ batch:1
 first~ ever:-3
 first~ go:-2
 first~ hour:-3
 first~ it:-4
 first~ lot:4
 first~ one:-1
 first~ so:8
 first~ soap:-1
 first~ the:-1
 first~ then:-11
 first~ time:2
 first~ to:-4
 first~ try:-5
 first~ went:-3
 first~0:2
 first~t:3
 fish:-1
 fit:-2
 fits:-5
 fits~ the:-3
 fit~ ?:-1
 fit~ the:3
 fixed:-9
 fizz:-2
 flak:5
 flake:7
 flame:-6
 flat:2
 flatmate:-2
 flat~ and:-7
 flat~ boil:3
 flat~ in:-6
 float:-3
 float~ an:-4
 floor:3
 floor~ and:-3
 fluid:3
 fluid~ ounc:7
 foam:-5
 foam~ over:6
 fold:-1
 folder:-6
 fold~ in:2
 folk:-8
 folks:-6
 follow:-2
 forever:-6
 forgett:-1
 forget~ the:-2
 forgiv:-9
 forgive:-3
 forgot:4
 forgotten:3
 forgot~ it:1
 forgot~ to:4
 form:-7
 formula:-5
 forum:-10
 for~ a:-3
 for~ about:1
 for~ after:2
 for~ ages:-1
 for~ all:-3
 for~ an:-6
 for~ babi:-7
 for~ both:5
 for~ candl:-6
 for~ christma:-2
 for~ days:-5
 for~ each:5
 for~ floor:-4
 for~ free:3
 for~ gram:5
 for~ half:4
 for~ hands:1
 for~ hardnes:1
 for~ his:-4
 for~ it:-4
 for~ laundry:4
 for~ luck:5
 for~ me:2
 for~ more:1
 for~ my:1
 for~ next:-4
 for~ no:5
 for~ noth:-7
 for~ once:8
 for~ one:4
 for~ our:-2
 for~ people:-3
 for~ read:-3
 for~ salad:-9
 for~ saturday:4
 for~ shav:-5
 for~ skin:-8
 for~ soap:-8
 for~ some:-7
 for~ that:-1
 for~ the:2
 for~ these:-2
 for~ this:-4
 for~ those:-3
 for~ today:3
 for~ us:3
 for~ wash:-2
 for~ what:5
 for~ word:-7
 for~ years:-3
 for~ you:-9
 for~ your:4
 for~%:7
 for~0:-5
 for~=:-7
 for~>:-1
 for~A:-3
 for~B:-3
 for~F:1
 for~L:-5
 for~N:-5
 for~S:-7
 for~W:-1
 for~X:1
 for~d:-7
 for~e:-7
 for~t:-7
 for~v:-4
 for~w:-1
 found:7
 found~ a:2
 found~ it:4
 found~ on:2
 found~ out:3
 found~ the:8
 fractionat:11
 fram:-10
 freeze:-3
 freezer:-1
 freezer~ for:-7
 freezer~ in:-2
 freezer~ paper:-4
 freeze~ the:-6
 fresh:-4
 friday:3
 friday~ and:-4
 fridge:-2
 fridge~ for:-5
 fridge~ overnight:-6
 fried:4
 friend':-4
 friend:-6
 friend~ says:-7
 friend~ who:5
 friend~ with:-1
 frighten:-5
 from~ a:3
 from~ an:-4
 from~ before:-1
 from~ christma:1
 from~ graz:-3
 from~ it:-3
 from~ krakow:-2
 from~ last:-8
 from~ me:-5
 from~ memory:-1
 from~ my:-3
 from~ our:2
 from~ sunday:8
 from~ that:2
 from~ this:-1
 from~ what:-8
 from~ work:2
 from~0:-4
 from~=:-1
 from~F:-4
 from~L:-6
 from~t:-8
 from~w:-8
 front:-1
 front~ of:-6
 froze:3
 frozen:-1
 frozen~ cubes:-3
 frozen~ in:2
 frozen~ to:-5
 frozen~w:-10
 froze~ it:2
 fruit:-5
 fry:1
 fryer:4
 full:5
 full~ of:-3
 fume:-7
 fumes:-9
 fun:-10
 funnel:1
 funny:-8
 further:6
 fwd:-2
 fwd~ ::-3
 f~0:-6
 g:-4
 garage:-7
 garden:-5
 gas:-6
 gate:-8
 gave:1
 gave~ it:2
 gave~ me:6
 gave~ out:7
 gave~ the:-3
 gave~ up:5
 gave~ us:2
 gave~0:-7
 gel:-2
 gell:-2
 gel~ ::-4
 gel~ at:-1
 gel~ phase:-3
 generou:6
 gent:-6
 gentle:-1
 gentler:6
 german:-4
 get:-4
 gets:-5
 gets~ a:2
 gets~ the:-4
 gets~0:-3
 get~ a:2
 get~ it:3
 get~ to:-7
 get~0:-10
 get~F:3
 ghana:-8
 gift:-8
 girl:-2
 giv:-7
 give:-3
 given:-3
 gives:-9
 gives~ me:-4
 gives~ the:-6
 gives~%:5
 gives~0:-8
 give~ it:-7
 give~ me:1
 give~ or:5
 give~ the:-3
 give~ to:-2
 glad:-2
 glass:-2
 glass~ and:6
 glass~ of:6
 glossy:-3
 glov:-9
 glov~ and:-5
 glov~ on:-6
 glug:7
 glug~ of:4
 go:-1
 goat:3
 goats:-1
 goats~ are:2
 goes:-7
 goes~ away:-2
 goes~ in:-2
 goes~ into:-5
 goes~ off:-4
 goes~ on:-9
 goes~ to:-1
 goes~ up:-6
 goggl:-9
 goggl~ and:-4
 goggl~ on:-3
 going:4
 going~ by:-6
 going~ in:4
 going~ to:-1
 gone:4
 gone~ after:-6
 gone~ by:-10
 gone~ to:1
 gone~ up:-3
 gonna:3
 good:-2
 good~ ?:-3
 good~ bit:10
 good~ enough:-1
 good~ even:-3
 good~ for:-6
 good~ glug:7
 good~ morn:-5
 good~ one:-6
 good~ or:-2
 good~ pot:-2
 good~ to:-2
 good~F:-9
 good~t:-5
 goose:3
 got:5
 got~ a:-4
 got~ in:-2
 got~ into:5
 got~ it:-3
 got~ my:-4
 got~ round:6
 got~ swapp:1
 got~ the:-4
 got~ to:5
 got~ too:2
 got~ wet:2
 got~0:-7
 got~=:-4
 got~S:-3
 got~b:4
 go~ ?:-3
 go~ at:4
 go~ by:3
 go~ clear:1
 go~ down:1
 go~ for:1
 go~ in:1
 go~ into:-9
 go~ on:-6
 go~ out:4
 go~ over:-6
 go~ rancid:-6
 go~ to:-2
 go~ up:4
 go~ with:10
 go~ wrong:-4
 grabb:7
 grade:5
 grain:-8
 grainy:-6
 gram:-3
 gramm:-8
 grams:-1
 grams~ ::-8
 grams~ and:-2
 grams~ cost:-2
 grams~ for:-2
 grams~A:-4
 gram~ for:5
 grand:-5
 grandad:6
 granddaughter:-3
 grandfather:-1
 grandma:-1
 grandmother:-8
 grandmother~ had:-3
 grandpa:1
 grandson:6
 granny:-2
 grans:-5
 grat:1
 grate:-3
 grateful:-1
 grate~ the:-8
 gravy:-1
 graz:-4
 greas:-3
 grease:-2
 greasy:1
 great:-1
 great~ aunt:-4
 green:-2
 green~ and:5
 greeting:-5
 greeting~ from:-5
 grind:-4
 grind~ the:-3
 grocer:-4
 ground:-8
 group:3
 group~ ::-4
 group~ of:-5
 grown:3
 guess:11
 guess~ the:-2
 guest:-9
 guild:-7
 g~ ::-6
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:3
 habit:2
 had:3
 hadnt:5
 had~ a:-7
 had~ already:7
 had~ been:5
 had~ come:5
 had~ cool:-7
 had~ dropp:-4
 had~ gone:10
 had~ in:-3
 had~ it:3
 had~ melt:2
 had~ no:-3
 had~ only:-1
 had~ set:1
 had~ some:-2
 had~ the:-4
 had~ to:-6
 had~0:-4
 had~<:-5
 had~=:2
 had~>:-7
 had~F:4
 had~N:-5
 had~X:3
 had~b:8
 hair:-1
 half:6
 halfway:-5
 halfway~ through:3
 half~ a:2
 half~ and:-6
 half~ as:4
 half~ batch:5
 half~ is:6
 half~ of:3
 half~ the:-1
 half~A:-7
 half~F:-2
 half~I:-4
 half~W:-7
 hall:-8
 hallo:-2
 hallo~ my:-2
 halv:8
 halve:-1
 hammer:3
 hand:-3
 handful:1
 handful~ of:-5
 handle:-3
 handout~0:-4
 hands:-2
 hands~ ?:-3
 hands~ are:1
 handwrit:3
 handy:-7
 hand~ and:-1
 hand~ in:-4
 hand~ on:4
 hand~ out:-6
 hand~ soap:-5
 hand~ warm:-2
 hand~ with:-4
 hang:6
 hangs:-7
 happen:2
 happy:-4
 happy~ with:-8
 hard:-5
 harden:-6
 harder:-3
 harder~ bar:-2
 hardnes:-5
 hardware:-1
 hardware~ store:-5
 hard~ after:-2
 hard~ and:-4
 hard~ any:-7
 hard~ as:-7
 hard~ in:-1
 hard~ smell:-6
 hard~ to:6
 hard~W:-9
 harm:-7
 harsh:-9
 hasnt:-7
 has~ a:2
 has~ anyone:-7
 has~ become:-2
 has~ been:-1
 has~ cool:-6
 has~ done:-6
 has~ it:3
 has~ made:-2
 has~ moved:-7
 has~ no:-3
 has~ to:-3
 has~=:-5
 has~F:7
 has~N:-6
 hate:-5
 hates:-2
 hav:-3
 have:-1
 havent:4
 have~ a:-9
 have~ asked:4
 have~ been:-1
 have~ done:-2
 have~ enough:4
 have~ for:1
 have~ gone:2
 have~ had:4
 have~ i:-6
 have~ in:-1
 have~ it:1
 have~ made:-5
 have~ never:2
 have~ no:-2
 have~ not:-8
 have~ the:4
 have~ to:-9
 have~ used:-5
 have~0:-3
 have~=:-6
 have~>:-4
 have~F:2
 hdpe:-6
 he:-1
 head:-2
 heap:9
 heap~ spoon:2
 hear:-2
 heard:4
 heart:-2
 heat:-12
 heats:-8
 heats~ up:-5
 heat~ and:-3
 heat~ i:-3
 heat~ off:-3
 heat~ the:-4
 heaven:-7
 heavy:3
 heavy~ ?:-6
 heavy~ or:-6
 hed:3
 height:-6
 held:10
 held~ back:1
 held~ the:1
 hell:-6
 hello:-5
 hello~ from:-2
 help:6
 helps:-1
 hence:-4
 hence~ the:-9
 hens:-8
 her:-5
 heres:-7
 heres~ my:-1
 heres~ the:-4
 heres~ what:-8
 here~ ::-2
 here~ and:-3
 here~ goes:-3
 here~ i:5
 here~ in:-6
 here~ is:1
 here~ it:-5
 here~ so:-3
 here~ we:-8
 hers:-11
 herself:-7
 hers~ and:-6
 hers~ with:-10
 her~ hands:-4
 her~ life:-5
 her~ soap:-4
 her~A:-4
 her~F:-10
 hes:-1
 hey:-6
 he~ also:-8
 he~ has:-4
 he~ is:-2
 he~ says:6
 he~ was:-8
 hi:-1
 hid:-10
 high:-5
 him:-5
 himself:4
 his:-7
 hiss:2
 his~A:-5
 hit:1
 hit~ it:-6
 hive:-8
 hives:-6
 hiya:1
 hi~ everyone:-4
 hm:1
 hmm:4
 hob:-2
 hola:-3
 hold:-1
 holds:-5
 holds~ a:3
 holds~0:-3
 holds~v:-7
 holds~w:-7
 hold~ ?:-2
 hold~ back:6
 hold~ the:3
 hold~ up:-3
 hole:-5
 holiday:-9
 home:1
 home~ and:4
 honest:6
 hood:-8
 hope:2
 hope~ it:-5
 hope~ the:-3
 hot:-8
 hotter:-8
 hotter~ than:-4
 hot~ or:-4
 hour:-2
 hour~ and:-6
 hour~ then:-2
 hour~0:1
 house:4
 house~ smell:-7
 how:2
 how~ do:1
 how~ does:-4
 how~ i:4
 how~ it:-1
 how~ long:-6
 how~ many:-6
 how~ much:8
 how~ my:-6
 how~ the:-8
 how~ to:-10
 how~ we:-6
 hp:-4
 hp~ in:-3
 hubby:1
 huge:6
 humidity:-2
 humidity~%:-4
 hurry:-4
 hurt:-3
 hurts:-3
 husband:2
 husband~ says:-4
 husband~ who:-8
 i'd:1
 i'd~ already:6
 i'd~ be:-8
 i'd~ guess:8
 i'd~ have:-10
 i'd~ like:7
 i'd~ love:-5
 i'd~ never:-6
 i'd~ pour:-2
 i'd~ put:3
 i'd~ read:4
 i'd~ say:5
 i'd~ use:-7
 i'd~ weigh:6
 i:3
 idea:-2
 idea~ which:6
 idk:6
 ie:7
 if:-3
 if~ anyone:-2
 if~ im:4
 if~ it:3
 if~ its:-1
 if~ my:2
 if~ somebody:-7
 if~ someone:1
 if~ that:4
 if~ the:-4
 if~ ther:-5
 if~ this:3
 if~ ur:-8
 if~ you:-6
 if~ your:-6
 if~ youre:-7
 if~ yours:-4
 if~ youve:-8
 if~A:-5
 if~F:-6
 ignore:7
 ignore~ the:7
 ill~ do:-4
 ilse:-2
 im:1
 impatient:-7
 im~ a:-3
 im~ after:8
 im~ at:-9
 im~ doing:-3
 im~ going:2
 im~ in:-7
 im~ mak:2
 im~ not:1
 im~ on:4
 im~ told:-4
 im~ using:6
 im~0:-3
 in:1
 inch:1
 incl:1
 includ:5
 includ~ the:8
 individual:-6
 individual~ mould:-6
 infus:5
 infus~ with:5
 ingredient:-4
 ingredient~ g:-3
 ingredient~ grams:-4
 ingredient~ oz:-6
 ingredient~ weight:-3
 inside:-2
 insist:6
 instead:3
 instruction:1
 insulate:-7
 internet:-3
 into:-1
 into~ a:-7
 into~ cubes:-5
 into~ mould:-3
 into~ oils:-3
 into~ one:-8
 into~ that:4
 into~ the:2
 into~ this:6
 into~0:-4
 into~=:-4
 into~W:-7
 into~b:2
 into~v:-3
 in~ ::3
 in~ ?:5
 in~ a:-2
 in~ about:-1
 in~ after:6
 in~ all:-8
 in~ an:-6
 in~ and:-1
 in~ another:5
 in~ april:-7
 in~ as:3
 in~ at:5
 in~ august:3
 in~ batch:-4
 in~ before:7
 in~ between:-7
 in~ blend:-9
 in~ burst:-2
 in~ by:1
 in~ case:-7
 in~ class:2
 in~ cold:-6
 in~ cubes:-5
 in~ dag:-2
 in~ each:-4
 in~ every:-2
 in~ fact:5
 in~ first:-4
 in~ for:9
 in~ front:-7
 in~ grams:-10
 in~ half:1
 in~ her:-8
 in~ hers:-8
 in~ his:-8
 in~ hot:-5
 in~ i:6
 in~ it:3
 in~ its:7
 in~ january:-6
 in~ july:-7
 in~ june:-7
 in~ last:-1
 in~ law:-3
 in~ laws:-4
 in~ march:-10
 in~ may:4
 in~ maybe:3
 in~ my:-1
 in~ no:-7
 in~ october:-1
 in~ ohio:-6
 in~ once:11
 in~ one:4
 in~ or:3
 in~ order:-5
 in~ our:3
 in~ place:2
 in~ plus:-4
 in~ red:2
 in~ short:-5
 in~ slow:-2
 in~ small:-5
 in~ so:4
 in~ spr:-8
 in~ step:-4
 in~ steps:6
 in~ summer:-7
 in~ that:2
 in~ the:-2
 in~ there:7
 in~ tiny:6
 in~ to:-2
 in~ too:1
 in~ total:-6
 in~ truth:2
 in~ under:-3
 in~ week:-4
 in~ went:6
 in~ when:-5
 in~ which:1
 in~ winter:-2
 in~ with:6
 in~ your:-1
 in~0:-6
 in~<:2
 in~=:-6
 in~>:-3
 in~F:-3
 in~I:-6
 in~L:2
 in~N:6
 in~W:-4
 in~b:-8
 in~e:3
 in~l:-1
 in~r:-4
 in~t:-6
 in~v:-8
 in~w:1
 ish:-6
 isnt:7
 isnt~ in:4
 isnt~ it:5
 is~ a:3
 is~ about:-6
 is~ actual:5
 is~ all:-3
 is~ already:2
 is~ alway:-2
 is~ an:4
 is~ and:-7
 is~ as:-1
 is~ at:-7
 is~ below:-3
 is~ cheap:-7
 is~ clear:-3
 is~ com:1
 is~ correct:-9
 is~ dear:-1
 is~ dry:4
 is~ enough:-4
 is~ exact:-7
 is~ fine:-10
 is~ finish:3
 is~ for:-3
 is~ from:-1
 is~ going:4
 is~ gone:-6
 is~ good:-8
 is~ hard:-1
 is~ her:-3
 is~ hot:-7
 is~ how:-1
 is~ in:3
 is~ it:-3
 is~ just:-9
 is~ left:-2
 is~ like:-3
 is~ love:-3
 is~ meant:-1
 is~ mine:-8
 is~ more:-1
 is~ near:-7
 is~ no:-8
 is~ normal:-7
 is~ not:-3
 is~ noth:-2
 is~ now:5
 is~ off:4
 is~ ok:-7
 is~ on:1
 is~ one:3
 is~ only:-10
 is~ our:-7
 is~ out:1
 is~ over:1
 is~ plenty:1
 is~ real:11
 is~ safe:-2
 is~ she:-2
 is~ short:2
 is~ small:-4
 is~ sold:4
 is~ step:-2
 is~ technical:6
 is~ that:-3
 is~ the:-3
 is~ there:-5
 is~ thick:-4
 is~ this:-8
 is~ to:1
 is~ too:1
 is~ weigh:-3
 is~ what:4
 is~ where:-8
 is~ whether:-7
 is~ why:-7
 is~ with:11
 is~ worth:-7
 is~%:-1
 is~0:5
 is~<:-5
 is~=:-5
 is~>:-6
 is~A:-2
 is~F:5
 is~L:4
 is~N:6
 is~S:1
 is~T:-7
 is~b:3
 is~d:-1
 is~e:-7
 is~l:-2
 is~t:-9
 is~v:-3
 it:2
 itch:-2
 item:-3
 item~ grams:-3
 itll:-2
 itll~ be:2
 its:1
 itself:-4
 its~ a:3
 its~ about:-6
 its~ all:-3
 its~ as:-6
 its~ been:-6
 its~ clear:-7
 its~ cook:4
 its~ date:-4
 its~ fine:-7
 its~ for:6
 its~ gone:3
 its~ hot:-5
 its~ in:-4
 its~ just:-7
 its~ made:3
 its~ my:1
 its~ not:-5
 its~ on:-7
 its~ only:-3
 its~ own:-2
 its~ place:4
 its~ ready:-7
 its~ sitt:-4
 its~ the:-1
 its~ time:-5
 its~ too:1
 its~ weight:-6
 its~ what:4
 its~0:7
 its~=:-6
 its~A:4
 its~N:6
 its~b:-3
 its~d:-6
 its~l:3
 its~t:1
 it~ ::-6
 it~ ?:-4
 it~ a:1
 it~ about:-6
 it~ add:-4
 it~ again:2
 it~ alone:-7
 it~ already:3
 it~ and:-2
 it~ another:3
 it~ anyway:-10
 it~ as:-2
 it~ away:-6
 it~ back:1
 it~ bad:7
 it~ be:1
 it~ because:6
 it~ before:-3
 it~ behav:-2
 it~ bit:6
 it~ but:-7
 it~ can:-4
 it~ check:-8
 it~ clear:-4
 it~ climb:-4
 it~ come:-5
 it~ comes:2
 it~ cooks:-4
 it~ cools:-6
 it~ correct:-5
 it~ cost:-6
 it~ cut:-4
 it~ did:-6
 it~ didnt:1
 it~ do:-3
 it~ does:1
 it~ doesnt:-2
 it~ down:1
 it~ dried:4
 it~ drop:-3
 it~ enough:-4
 it~ every:-5
 it~ first:2
 it~ fits:-6
 it~ flat:-7
 it~ foam:2
 it~ from:-1
 it~ gets:-4
 it~ gives:1
 it~ go:-5
 it~ got:1
 it~ hard:-4
 it~ heats:-5
 it~ here:-4
 it~ holds:-5
 it~ if:-4
 it~ in:-2
 it~ into:-9
 it~ is:3
 it~ isnt:2
 it~ it:2
 it~ its:-6
 it~ last:-2
 it~ lasts:-5
 it~ lather:-8
 it~ like:-4
 it~ look:6
 it~ looks:-5
 it~ makes:2
 it~ matter:2
 it~ may:-4
 it~ melts:-3
 it~ needs:-5
 it~ never:-3
 it~ no:5
 it~ now:-7
 it~ off:6
 it~ ok:-5
 it~ on:-1
 it~ once:-7
 it~ or:-6
 it~ outside:-5
 it~ over:-1
 it~ past:-10
 it~ plus:-5
 it~ real:4
 it~ safe:1
 it~ said:5
 it~ says:3
 it~ seiz:3
 it~ set:2
 it~ sets:-3
 it~ should:-3
 it~ since:-2
 it~ sit:1
 it~ smell:-1
 it~ stand:-1
 it~ stay:5
 it~ stays:-1
 it~ still:-4
 it~ stink:-6
 it~ sweat:-6
 it~ takes:-5
 it~ the:-6
 it~ then:-4
 it~ there:-8
 it~ thicken:4
 it~ through:-7
 it~ times:-2
 it~ to:3
 it~ too:-2
 it~ took:-6
 it~ trac:-2
 it~ turn:-4
 it~ turns:2
 it~ twice:2
 it~ under:-5
 it~ until:-4
 it~ up:1
 it~ wants:-4
 it~ was:1
 it~ went:2
 it~ when:4
 it~ will:-6
 it~ with:-5
 it~ without:4
 it~ wont:-7
 it~ would:-2
 it~ wouldnt:5
 it~ wrong:-6
 it~ zapp:6
 it~ zaps:-6
 it~0:2
 it~=:-4
 it~A:-3
 it~F:-3
 it~S:-3
 it~b:4
 it~t:-7
 ive:-2
 ive~ a:3
 ive~ been:-7
 ive~ bought:5
 ive~ done:-6
 ive~ gone:8
 ive~ got:-2
 ive~ had:-7
 ive~ just:2
 ive~ made:-5
 ive~ never:-6
 ive~ no:-1
 ive~ not:-5
 ive~ only:2
 ive~ read:-6
 ive~ seen:-8
 ive~ since:6
 ive~ tried:-6
 ive~ weigh:-3
 ivory:-6
 i~ ?:-8
 i~ actual:2
 i~ add:-5
 i~ added:4
 i~ alway:-2
 i~ am:6
 i~ ask:1
 i~ asked:-5
 i~ began:-8
 i~ believe:2
 i~ blame:-6
 i~ boil:1
 i~ bought:-6
 i~ buy:-3
 i~ call:-1
 i~ came:3
 i~ can:-10
 i~ cant:-4
 i~ carri:10
 i~ caught:1
 i~ chang:-5
 i~ check:-8
 i~ chuck:9
 i~ copi:1
 i~ copy:-7
 i~ couldnt:-1
 i~ count:-2
 i~ cut:-1
 i~ did:3
 i~ didnt:1
 i~ dilut:-8
 i~ dilute:-4
 i~ dissolv:-1
 i~ dissolve:4
 i~ do:-8
 i~ dont:3
 i~ doubl:5
 i~ drain:8
 i~ dropp:2
 i~ empti:9
 i~ ended:-4
 i~ ever:-7
 i~ fill:9
 i~ final:-7
 i~ finish:-2
 i~ first:-5
 i~ fish:8
 i~ fold:-5
 i~ follow:1
 i~ forgot:-1
 i~ found:-2
 i~ freeze:1
 i~ froze:-3
 i~ gave:-2
 i~ get:-4
 i~ give:-5
 i~ go:3
 i~ got:-1
 i~ guess:8
 i~ had:-3
 i~ hadnt:4
 i~ halv:7
 i~ hand:-4
 i~ hate:-4
 i~ have:1
 i~ held:3
 i~ honest:10
 i~ hope:-2
 i~ just:2
 i~ keep:-2
 i~ kept:2
 i~ knock:4
 i~ know:-5
 i~ learn:-5
 i~ leave:3
 i~ left:9
 i~ let:2
 i~ like:-4
 i~ lost:6
 i~ made:-1
 i~ make:-8
 i~ may:2
 i~ mean:-1
 i~ meant:-6
 i~ measur:-3
 i~ mess:-6
 i~ mix:-6
 i~ mixed:3
 i~ must:4
 i~ near:-4
 i~ need:-1
 i~ never:2
 i~ notic:7
 i~ ok:2
 i~ once:-10
 i~ only:-1
 i~ open:-1
 i~ own:1
 i~ paid:-4
 i~ panick:-3
 i~ plan:-4
 i~ plann:-4
 i~ pour:-1
 i~ press:-5
 i~ print:-6
 i~ promis:2
 i~ put:4
 i~ ran:-3
 i~ read:3
 i~ real:-2
 i~ realis:4
 i~ reckon:-1
 i~ render:-2
 i~ replac:4
 i~ rins:8
 i~ round:6
 i~ run:-8
 i~ said:-8
 i~ saw:8
 i~ scrap:9
 i~ see:6
 i~ sell:-4
 i~ set:-3
 i~ shook:7
 i~ should:2
 i~ siev:-1
 i~ skipp:6
 i~ smell:1
 i~ soap:-5
 i~ split:-1
 i~ sprinkl:-5
 i~ stir:-8
 i~ stirr:5
 i~ stood:1
 i~ stopp:9
 i~ strain:-1
 i~ swapp:10
 i~ swear:2
 i~ take:-6
 i~ teach:-6
 i~ tell:-8
 i~ test:-2
 i~ think:3
 i~ thought:-3
 i~ threw:2
 i~ tipp:4
 i~ told:-2
 i~ took:3
 i~ translate:-4
 i~ trust:-4
 i~ turn:-3
 i~ type:2
 i~ typed:6
 i~ use:-5
 i~ usual:2
 i~ wait:-4
 i~ want:2
 i~ warm:-6
 i~ was:-7
 i~ wash:-2
 i~ wasnt:2
 i~ weigh:2
 i~ went:4
 i~ will:-7
 i~ work:-8
 i~ would:2
 i~ write:-10
 i~ wrote:4
 i~K:-8
 jam:1
 jam~ jar:3
 january:-11
 january~ and:-4
 jar:3
 jars:-8
 jars~ of:-5
 jar~ and:7
 jar~ of:7
 jar~ so:-3
 jelly:-4
 job:5
 join:1
 join~ the:4
 judge:4
 jug's:6
 jug:2
 jugs:2
 jug~ ::1
 jug~ and:4
 jug~ from:3
 jug~ in:-8
 jug~ is:-8
 jug~ of:5
 jug~ on:-6
 jug~ so:7
 jug~ to:6
 jug~ was:-4
 july:-4
 jump:6
 jumps:3
 june:-10
 just~ a:-3
 just~ as:-3
 just~ for:-8
 just~ the:3
 just~ want:-10
 just~ what:-7
 just~F:-3
 k:2
 keep:-8
 keeps:-8
 keeps~ it:-4
 keeps~ the:-2
 keep~ a:-5
 keep~ in:-6
 keep~ it:-7
 keep~ my:-7
 keep~0:-4
 keep~<:2
 keep~t:-3
 kept:2
 kept~ a:1
 kept~ in:-4
 kept~ the:1
 kept~0:2
 kettle:7
 kg:2
 kg~ cost:-2
 kid:7
 kidd:-8
 kids:-2
 kill:-6
 kilo:4
 kilo~ in:-4
 kilo~ of:-5
 kind:-1
 kinda:2
 kind~ check:-8
 kind~ of:-3
 kind~ with:3
 kiss:-5
 kitchen~ and:3
 kitchen~ bar:-7
 kitchen~ is:-4
 kitchen~ scale:5
 kitchen~ was:-4
 knew:-6
 knife:-9
 knob:8
 knob~ of:8
 knock:3
 knock~ a:-2
 knock~ the:6
 know:3
 knows:3
 knows~ how:4
 know~ ::-5
 know~ how:4
 know~ i:-5
 know~ if:3
 know~ is:-7
 know~ it:2
 know~ its:-4
 know~ that:3
 know~ the:-1
 know~ what:-7
 know~ whether:-5
 know~ which:2
 krakow:-2
 k~0:-10
 l:-6
 lab:-3
 label:1
 labell:-3
 label~ ::-6
 label~ on:-6
 label~ says:5
 label~0:-4
 ladi:-3
 ladl:10
 ladle:6
 ladle~ of:3
 lads:-3
 lady:-3
 lady~ at:-5
 lady~ in:-5
 lady~ on:-3
 land:1
 last:-5
 lasts:-8
 last~ autumn:-8
 last~ batch:-4
 last~ bit:5
 last~ minute:7
 last~ month:4
 last~ night:-4
 last~ of:-7
 last~ one:-9
 last~ time:-4
 last~ week:3
 last~ weeks:3
 last~ winter:-7
 last~ year:-6
 last~ years:-3
 last~0:3
 last~F:-6
 late:-1
 later:-2
 later~ on:-6
 lather:-6
 lather~ is:-3
 lather~ like:-7
 laugh:2
 laugh~ at:-3
 laundry:1
 laundry~ bar:-8
 laundry~ bars:-3
 laundry~ soap:-3
 law:-3
 laws:-4
 law~ who:-5
 layer:1
 lb:2
 lb~ oz:-7
 leaflet:-2
 leak:-2
 learn:-7
 learn~ from:-2
 learn~ that:1
 least:-3
 least~t:-1
 leav:-5
 leave:-4
 leave~ it:-2
 leave~ out:-9
 leave~ the:-3
 leave~t:-1
 leav~ a:-3
 leav~ the:-7
 leeds:3
 left:1
 leftover:1
 leftover~F:-2
 left~ and:1
 left~ for:-9
 left~ from:5
 left~ it:1
 left~ of:-6
 left~ on:2
 left~ over:-4
 left~ the:1
 left~ to:3
 length:-4
 lent:1
 less:5
 lesson:-7
 less~ of:5
 less~ than:-2
 less~F:-2
 less~W:-2
 let:-1
 lets:1
 letter:3
 let~ cool:-2
 let~ it:-3
 let~ me:-4
 let~ the:-4
 let~ them:3
 let~ us:-9
 let~ your:-6
 level:-1
 library:-5
 library~ book:-4
 lid:-1
 lidd:-2
 lids:-4
 lid~ and:-7
 lid~ of:-7
 lid~ off:2
 lid~ on:-5
 lie:-4
 life:2
 lift:3
 lift~ the:3
 light:1
 lighter:-5
 light~ on:2
 light~ trace:1
 like:-3
 liked:-5
 likes:-5
 likes~ it:2
 likewise:2
 like~ a:-3
 like~ alway:-9
 like~ an:-7
 like~ candle:-5
 like~ cheese:-8
 like~ custard:-5
 like~ i:-6
 like~ it:1
 like~ mad:2
 like~ mash:-5
 like~ me:-4
 like~ my:3
 like~ noth:-2
 like~ paper:3
 like~ porridge:3
 like~ sandpaper:-5
 like~ someone:-3
 like~ soup:-5
 like~ stone:-6
 like~ that:-6
 like~ the:-6
 like~ this:1
 like~ to:-4
 like~ you:-3
 like~%:1
 like~0:4
 like~F:-6
 like~L:-6
 like~S:-4
 like~U:-7
 like~X:-3
 like~t:8
 like~w:6
 limit:-6
 line:7
 lined:-6
 lined~ with:-2
 linen:-5
 line~ ::5
 line~ the:-4
 lip:-5
 lip~ balm:-5
 liquid:2
 liquid~ ::2
 liquid~ and:-1
 liquid~ soap:-1
 liquor:9
 list:3
 list~ for:-8
 list~ i:4
 list~ is:-4
 litre:3
 little:2
 little~ ?:-6
 little~A:1
 little~F:-8
 little~W:2
 live:-5
 lived:-7
 lives:-6
 lives~ in:-5
 loaf:-4
 loaf~ ::-4
 loaf~ i:1
 loaf~ mold:-2
 loaf~ mould:-3
 loaf~ tin:-2
 loav:-4
 local:-5
 lock:-7
 loft:-5
 log~ ::-1
 lol:-2
 long:-3
 longer:2
 longer~ than:-5
 long~ as:-7
 long~ sleev:-4
 long~ story:6
 long~ time:-4
 look:2
 looks:-11
 looks~ like:-4
 looks~ ok:-1
 look~ a:4
 look~ at:-5
 look~ for:2
 look~ it:-5
 look~ like:1
 look~ of:1
 look~ ok:-3
 look~ over:-4
 look~ right:-4
 loosen:9
 loosen~ it:5
 lose:-2
 loss:-2
 lost:3
 lost~ the:-8
 lot:-1
 lotion:7
 lots:-8
 lots~ of:-7
 lot~ ?:-1
 lot~ of:3
 lot~ to:-3
 lot~0:3
 loud:-8
 love:-6
 loves:3
 love~ a:2
 love~ and:-1
 love~ but:-5
 love~ it:-5
 love~ to:-5
 low:-2
 lower:7
 lowest:-5
 lowest~ flame:-5
 low~ and:-4
 low~ heat:-1
 low~ in:1
 low~t:-3
 luck:3
 lucki:-7
 lucky:-7
 lukewarm:-6
 lump:5
 lumps:-4
 lumpy:7
 lump~ of:-2
 lunch:-7
 lurker:-4
 luxury:-5
 lye's:6
 lye:2
 lyes:-8
 lyes~ together:-6
 lying:4
 l~0:-4
 m:-7
 machine:-6
 made:2
 made~ ::-6
 made~ a:3
 made~ for:-7
 made~ from:-3
 made~ hers:-7
 made~ in:-7
 made~ it:2
 made~ my:-3
 made~ of:-5
 made~ on:-4
 made~ soap:-3
 made~ the:8
 made~ this:-5
 made~ up:5
 made~ with:-8
 made~0:9
 magazine:-4
 mak:9
 maker:-5
 makes:-5
 makes~ a:-8
 makes~ it:-3
 makes~ no:-5
 makes~ sense:-3
 makes~ the:-4
 makes~ up:8
 makes~0:-6
 makes~T:-9
 makes~b:-5
 make~ a:-8
 make~ it:8
 make~ sense:-3
 make~ soap:-5
 make~ the:-9
 make~ this:-4
 make~ up:-1
 mak~ it:8
 mak~ the:-3
 mak~ this:-2
 mama:-8
 man:-5
 many:-1
 march:-10
 margin:-1
 marit:-5
 mark:6
 market:-5
 marks:1
 marta:3
 mash:-5
 mash~ potato:-4
 mass:-6
 match:-1
 material:-7
 maths:4
 matter:3
 matter~ to:3
 may:1
 maybe:8
 maybe~ a:7
 maybe~0:4
 maybe~<:-2
 maybe~t:-8
 maybe~w:3
 may~ have:5
 may~ i:3
 me:-1
 mean:-3
 means:-2
 meant:-2
 meant~ to:-2
 meanwhile:3
 mean~ the:3
 measur:5
 measure:1
 measur~ cup:6
 measur~ jug:8
 measur~ the:1
 mechanic:3
 medium:-6
 meets:-3
 melt:-2
 melts:-9
 melts~ at:-5
 melt~ and:4
 melt~ at:-3
 melt~ by:-8
 melt~ first:-6
 melt~ i:-9
 melt~ in:7
 melt~ on:-7
 melt~ the:-8
 melt~ with:3
 melt~=:-3
 melt~F:-2
 memory:5
 men:-8
 mention:2
 merci:-4
 mess:-7
 mess~ up:-4
 method:-5
 method~ ::-6
 metric:-6
 me~ ?:3
 me~ a:1
 me~ about:-2
 me~ at:3
 me~ before:-5
 me~ but:-2
 me~ for:-2
 me~ how:-6
 me~ i:-2
 me~ if:-2
 me~ in:-2
 me~ it:-4
 me~ its:-7
 me~ on:-2
 me~ that:-2
 me~ the:4
 me~ to:-5
 me~ what:1
 me~ where:3
 me~ whether:-2
 me~ with:2
 me~0:-8
 me~t:-7
 microwave:1
 middle:-6
 middle~ of:4
 might~ have:3
 mild:-1
 milder:-1
 milk:-7
 milk~ carton:-7
 mill:-7
 min:7
 mind:5
 mind~ the:-3
 mine:-3
 mine~ from:1
 mine~ had:-4
 mine~ has:-3
 mine~ in:-6
 mine~ is:7
 mine~ took:-6
 mine~ was:2
 mine~ with:5
 mini:1
 minimum:1
 minus:6
 minus~ the:9
 minus~ whatever:9
 minute:-3
 minute~0:-7
 min~ .:6
 misread:11
 miss:3
 miss~ the:4
 mistak:3
 mistake:4
 mistake~ and:-7
 mix:3
 mixed:4
 mixed~ at:-5
 mixed~ in:5
 mixed~ it:5
 mixed~ the:2
 mixed~ up:-1
 mixer:-3
 mix~ at:-2
 mix~ the:3
 mix~A:-4
 mk:-4
 ml:12
 mm:-7
 mode:2
 modern:-6
 mold:1
 molds:3
 moment:-7
 moms:-2
 mon:4
 monday:-2
 money:3
 month:-3
 month~ i:-2
 month~0:-5
 moon:-5
 mopp:6
 mopp~ up:6
 more:3
 more~ and:-8
 more~ fat:-6
 more~ like:11
 more~ of:2
 more~ or:-4
 more~ than:-3
 more~A:4
 more~F:3
 morn:-1
 most:4
 most~ of:8
 mother:-1
 mother~ and:-8
 mother~ did:3
 mould:-2
 mouldy:4
 mould~ ::-3
 mould~ and:-2
 mould~ bang:-3
 mould~ for:-3
 mould~ holds:-5
 mould~ in:-5
 mould~ is:4
 mould~ of:-7
 mould~ on:-5
 mould~ so:-8
 mould~ the:-4
 mould~ was:-4
 mould~ with:-8
 mould~0:-3
 mould~t:-4
 mould~v:-4
 mov:1
 moved:4
 moved~ to:3
 moves:-3
 mrs:4
 much:-1
 much~ ?:-5
 much~ and:6
 much~ as:-7
 much~ fat:-4
 much~ for:-8
 much~ of:-4
 much~ superfat:-5
 much~A:-3
 much~F:-4
 much~W:4
 muffin:-7
 mug:5
 multip:5
 mum~ says:-4
 museum:-6
 mush:-4
 must:-4
 must~ be:-9
 mutton:2
 my:-1
 myself:-3
 my~ arm:-4
 my~ aunt:-3
 my~ aunts:3
 my~ babcia:-4
 my~ bars:-5
 my~ bathroom:7
 my~ book:4
 my~ boyfriend:-3
 my~ brother':3
 my~ brother:-3
 my~ colleague:-4
 my~ country:4
 my~ dad:-7
 my~ dads:2
 my~ daughter':-7
 my~ daughter:2
 my~ earlier:3
 my~ elbow:-5
 my~ english:-1
 my~ ex:-6
 my~ father:-2
 my~ first:-1
 my~ flatmate:-4
 my~ friend:3
 my~ glass:-3
 my~ good:-7
 my~ gran:1
 my~ granddaughter:-3
 my~ grandfather:1
 my~ grandmother:-9
 my~ grandson:5
 my~ great:-2
 my~ hair:-1
 my~ hands:-6
 my~ handwrit:-8
 my~ husband:-5
 my~ kilo:-4
 my~ kitchen:3
 my~ last:-10
 my~ laundry:-3
 my~ little:2
 my~ mind:7
 my~ mold:-6
 my~ mould:1
 my~ mums:-7
 my~ nan:-8
 my~ nans:-5
 my~ neighbour:-3
 my~ nephew:-6
 my~ niece:-1
 my~ notebook:8
 my~ notes:-1
 my~ old:-2
 my~ own:2
 my~ partner:-1
 my~ paste:-7
 my~ phone:-2
 my~ plan:-3
 my~ previou:-1
 my~ question:-2
 my~ recipe:-3
 my~ scale:4
 my~ sheet:-2
 my~ sister:-9
 my~ skin:6
 my~ slow:-5
 my~ soap:-2
 my~ son:1
 my~ spreadsheet:-4
 my~ sums:2
 my~ table:-7
 my~ teacher:-5
 my~ third:-3
 my~ thumb:-2
 my~ tongue:-1
 my~ usual:-8
 my~ very:-7
 my~ wife:2
 my~ wifes:-2
 my~%:-2
 my~0:-7
 my~A:1
 my~F:-2
 my~K:-7
 my~L:-8
 my~S:-5
 my~W:4
 my~b:1
 my~l:-6
 my~t:3
 my~w:4
 n:-1
 name:-11
 name~ ::-3
 nan:-10
 nans:-6
 natural:-7
 nb:2
 near:-5
 nearer:6
 nearer~0:4
 near~ enough:4
 near~ it:-1
 near~ the:-3
 near~%:-10
 near~0:2
 near~d:-1
 near~t:3
 need:-4
 needs:-6
 needs~ a:-5
 need~ ::-2
 need~ a:-5
 need~ for:1
 need~ it:2
 need~ more:-7
 need~ the:-6
 need~ to:1
 negative:2
 neighbor:-8
 neighbour:-4
 neither:2
 nephew:-2
 nerv:-8
 nervou:-3
 net:3
 never:-1
 never~ above:-7
 never~ added:3
 never~ again:-10
 never~ bother:-8
 never~ check:-5
 never~ did:-6
 never~ fail:-3
 never~ go:-9
 never~ got:7
 never~ happen:7
 never~ in:-5
 never~ let:-5
 never~ made:10
 never~ once:-2
 never~ set:6
 never~ the:-8
 never~ weigh:-2
 never~ went:-9
 new:-4
 news:-5
 newsletter:1
 newspaper:-7
 new~ bottle:-4
 new~ here:-3
 new~ one:6
 new~ scale:-5
 new~ to:-3
 next:-9
 next~ door:-3
 next~ month:-6
 next~ morn:1
 next~ one:-7
 next~ time:-10
 next~ to:3
 next~ year:-3
 nicer:-7
 niece:3
 night:-4
 night~ and:-4
 night~ before:-6
 nil:2
 no:-1
 nobody:-2
 nobody~ answer:-3
 nobody~ had:5
 nobody~ has:1
 nobody~ will:-2
 none:5
 none~ at:-6
 none~ in:-1
 none~ the:-1
 nonna:-7
 noon:-6
 nor:-1
 normal:-7
 normal~ ?:-6
 normal~ one:-3
 north:-3
 nose:-8
 note:8
 notebook:-1
 notebook~ ::-4
 notebook~ says:1
 notebook~ the:-3
 notes:-3
 notes~ app:-6
 notes~ from:-6
 noth:-5
 noth~ and:-4
 noth~ at:-6
 noth~ but:-4
 noth~ else:-1
 noth~ in:-3
 notic:8
 notice:1
 notic~ the:3
 notic~ when:8
 not~ ?:-3
 not~ a:-8
 not~ be:-9
 not~ for:-4
 not~ going:1
 not~ in:2
 not~ like:-8
 not~ more:-5
 not~ on:7
 not~ sure:4
 not~ that:-6
 not~ the:-2
 not~ to:-7
 not~ too:-3
 not~ use:-3
 not~0:-5
 not~A:-2
 not~F:9
 not~b:8
 not~e:8
 not~w:1
 nought:-1
 november:-3
 now:4
 nowhere:-6
 now~ ::-6
 now~ ?:2
 now~ and:-3
 now~ i:1
 now~ in:1
 now~ it:-3
 now~ its:6
 now~ my:3
 now~ on:4
 now~ so:-7
 now~ the:3
 now~F:2
 no~ ?:-2
 no~ ash:-5
 no~ difference:-7
 no~ gel:-5
 no~ good:-3
 no~ harm:-7
 no~ i:-6
 no~ idea:1
 no~ it:5
 no~ longer:7
 no~ more:-1
 no~ need:-7
 no~ other:-8
 no~ reason:-4
 no~ scale:-1
 no~ smell:-3
 no~ sorry:-1
 no~ superfat:-7
 no~ time:-5
 no~ wait:3
 no~ white:-3
 no~ zap:-6
 no~0:2
 no~F:8
 no~I:4
 no~S:-9
 no~W:2
 no~X:-10
 number:-5
 number~ ?:-4
 number~ and:1
 number~ are:2
 number~ hold:-2
 number~ i:-5
 number~ is:-4
 number~0:-10
 nurse:-4
 n~ it:-3
 n~=:-4
 n~F:4
 o'clock:-3
 o:-5
 oat:-6
 obvious:-4
 obvs:-6
 october:2
 odd:-6
 odds:-6
 of:2
 off:3
 offcut:-5
 offer:-7
 office:-7
 off~ and:3
 off~ at:-6
 off~ by:-2
 off~ for:6
 off~ i:-7
 off~ in:2
 off~ it:1
 off~ my:-3
 off~ the:3
 off~ wait:-1
 off~ what:10
 off~0:-4
 off~l:2
 often:-5
 of~ a:1
 of~ about:-5
 of~ all:-6
 of~ ammonia:-5
 of~ an:1
 of~ anyth:-8
 of~ batter:-8
 of~ clean:-4
 of~ cold:1
 of~ course:-1
 of~ doors:-7
 of~ dried:-2
 of~ each:7
 of~ everyth:3
 of~ extra:-1
 of~ eyes:-2
 of~ fats:1
 of~ half:1
 of~ her:1
 of~ it:2
 of~ last:4
 of~ melt:4
 of~ mine:-5
 of~ my:-3
 of~ noth:-7
 of~ oil:2
 of~ oils:-3
 of~ old:5
 of~ one:1
 of~ our:-5
 of~ paste:-8
 of~ plain:1
 of~ rough:-2
 of~ soap:3
 of~ some:3
 of~ stirr:-6
 of~ sunday:-6
 of~ that:6
 of~ the:3
 of~ these:-6
 of~ this:1
 of~ us:1
 of~ warm:-3
 of~ wet:-7
 of~ what:-3
 of~ which:-3
 of~ you:-5
 of~ your:-5
 of~%:2
 of~0:-7
 of~=:1
 of~>:-8
 of~A:2
 of~B:3
 of~C:6
 of~F:-3
 of~I:-2
 of~K:3
 of~L:8
 of~M:-6
 of~N:9
 of~U:4
 of~W:2
 of~X:-4
 of~b:-1
 of~t:-2
 of~v:-8
 of~w:-7
 oh:1
 ohio:-6
 oh~ and:1
 oil:5
 oils:-1
 oils~ and:-5
 oils~ are:-3
 oils~ at:-7
 oils~ because:-7
 oils~ come:-4
 oils~ g:-4
 oils~ in:-3
 oils~ or:-1
 oils~ to:-1
 oils~ were:3
 oils~>:-2
 oily:5
 oil~ ?:-7
 oil~ and:-2
 oil~ at:6
 oil~ from:2
 oil~ g:-4
 oil~ grams:-5
 oil~ in:-3
 oil~ is:1
 oil~ of:3
 oil~ on:-4
 oil~ to:2
 oil~ was:-2
 oil~ weight:-5
 ok:-1
 okay:-4
 okay~ ?:-5
 okay~ for:-5
 okay~ so:-3
 ok~ ?:-2
 ok~ before:-4
 ok~ for:-6
 ok~ or:-2
 ok~ so:3
 ok~ to:-6
 ok~ with:-4
 old:2
 older:2
 oldest:-8
 old~ and:3
 old~ days:-4
 old~ one:-4
 old~ pillowcase:-5
 old~ recipe:1
 old~ sheet:1
 old~ soap:-6
 old~ tub:4
 old~A:4
 old~F:1
 olej:-3
 olej~F:-3
 oma:-5
 omg:-6
 on:-1
 once:-5
 once~ a:4
 once~ in:-1
 once~ it:3
 once~ its:-2
 once~ the:-4
 one:-4
 ones:-5
 ones~ are:-6
 one~ ::-3
 one~ ?:-2
 one~ after:-8
 one~ and:3
 one~ at:6
 one~ bar:-8
 one~ batch:-7
 one~ block:2
 one~ bottle:1
 one~ can:-5
 one~ for:-4
 one~ from:-8
 one~ go:3
 one~ had:-5
 one~ in:1
 one~ is:-1
 one~ jug:-2
 one~ last:-5
 one~ loaf:2
 one~ of:4
 one~ on:-4
 one~ pan:-4
 one~ pot:-6
 one~ since:5
 one~ the:1
 one~ thing:4
 one~ time:-3
 one~ to:-8
 one~ weigh:-8
 one~ went:-4
 one~ who:-8
 one~ with:-6
 one~ without:-4
 one~0:2
 one~F:-2
 one~w:-7
 onion:2
 only:4
 only~ about:6
 only~ after:-8
 only~ does:3
 only~ for:2
 only~ gave:4
 only~ got:-8
 only~ had:12
 only~ have:-3
 only~ if:-1
 only~ notic:7
 only~ put:2
 only~ so:-5
 only~ then:-10
 only~ there:-3
 only~ want:-11
 only~ when:1
 only~ whether:-7
 only~0:11
 only~=:-9
 only~F:-10
 only~l:-1
 onto:-1
 onto~ the:2
 on~ ::-4
 on~ a:-8
 on~ and:-8
 on~ before:-5
 on~ day:6
 on~ friday:1
 on~ glov:-3
 on~ high:-6
 on~ i:6
 on~ it:-5
 on~ its:-2
 on~ low:-5
 on~ me:-4
 on~ monday:-9
 on~ my:-1
 on~ offer:-7
 on~ one:-3
 on~ our:2
 on~ page:-4
 on~ paper:-4
 on~ saturday:-2
 on~ slow:-1
 on~ that:-2
 on~ the:1
 on~ them:-6
 on~ this:6
 on~ thursday:1
 on~ to:-4
 on~ tue:-1
 on~ tuesday:-5
 on~ we:-8
 on~ with:6
 on~ your:-5
 on~0:-8
 on~>:-7
 on~A:4
 on~F:5
 on~t:-3
 oops:5
 op:-2
 open:1
 opens:4
 open~ a:-9
 open~ all:9
 open~ since:7
 open~ the:-1
 open~ window:-5
 open~0:-1
 operator:-5
 operator~ ::-4
 opinion:-10
 optional:5
 or:-3
 order:-8
 order~ of:-6
 ordinary:5
 original:-3
 or~ a:2
 or~ am:-9
 or~ did:-8
 or~ do:-4
 or~ does:-6
 or~ is:-8
 or~ it:-7
 or~ just:-5
 or~ less:-4
 or~ more:-8
 or~ no:-6
 or~ not:-1
 or~ should:-5
 or~ take:5
 or~ the:-2
 or~ thereabout:3
 or~ too:-3
 or~ will:-3
 or~0:1
 or~N:-6
 other:-2
 otherwise:-9
 otherwise~ it:-7
 other~ way:-5
 other~0:3
 other~W:-7
 ought:-5
 ought~ to:-5
 ounc:6
 ounce:-4
 ounc~ for:6
 ours:-10
 ours~ is:-8
 our~ club:2
 our~ course:-5
 our~ own:-2
 our~ teacher:-7
 our~ town:-1
 our~ village:5
 out:2
 outdoor:-6
 outside:-8
 outside~ and:-1
 outside~ on:-5
 out~ ::-4
 out~ ?:1
 out~ a:1
 out~ again:3
 out~ and:4
 out~ at:5
 out~ by:4
 out~ for:3
 out~ i:-8
 out~ in:-3
 out~ like:-7
 out~ of:-1
 out~ on:1
 out~ so:2
 out~ the:-3
 out~ to:10
 out~ what:3
 out~ with:3
 out~0:4
 out~=:-2
 out~A:-2
 out~N:1
 out~w:-1
 oval:-4
 oven:-9
 oven~ at:-4
 over:1
 overfat:2
 overheat:-5
 overnight:-1
 overnight~ at:-5
 over~ ?:-7
 over~ a:2
 over~ and:4
 over~ for:5
 over~ from:4
 over~ half:-6
 over~ in:6
 over~ that:3
 over~ the:-3
 over~ to:1
 over~%:-9
 over~d:-3
 over~t:-5
 own:2
 own~ ::-3
 own~ a:-5
 own~0:-1
 own~F:3
 oyl:-4
 oz:2
 oz~ g:-4
 p:-7
 pack:1
 packet:6
 packet~ of:-2
 packs:-1
 packs~ of:-3
 paddle:-7
 page~ ::-6
 page~ is:-4
 page~0:-3
 paid~ for:6
 paid~0:-6
 pail:-9
 paint:7
 pair:3
 pairs:-6
 pale:-12
 pan:1
 panic:-7
 panick:1
 pantry:-6
 pan~ and:1
 paper~ and:-4
 paper~ cup:5
 paper~0:-4
 paper~t:-4
 parcel:5
 parent:-3
 parish:-7
 part:-1
 participant:2
 partner:-3
 part~ ?:4
 part~ of:1
 part~0:-10
 pass:-10
 passt:-5
 passt~ das:-5
 pass~ the:-4
 past:2
 paste:-9
 paste~ ::3
 paste~ in:-4
 paste~ is:-5
 paste~ to:-5
 paste~ was:1
 paste~ went:-4
 paste~ with:-4
 pastry:4
 past~ from:-5
 past~ its:-6
 past~0:-2
 patch:-5
 patience:-7
 patient:-8
 pcs:-6
 pct:-7
 pdf:-8
 peak:-8
 pearl:1
 pellet:3
 pencil:-2
 pencill:8
 people:-9
 people~ ask:-5
 people~ in:-3
 people~ who:-9
 people~0:-1
 per:-3
 percent:2
 percentag:-3
 perfect:-7
 perhap:9
 perhap~0:4
 period:-4
 person:-7
 per~ bar:-3
 per~ batch:2
 per~ kilo:-2
 petra:3
 ph:-9
 pharmacist:1
 pharmacy:-6
 phase:-5
 phase~ a:-4
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:6
 phone:1
 phone~ and:5
 phone~ is:-6
 phone~ rang:7
 phone~ read:-8
 photo:-4
 photo~ of:-1
 ph~ strip:-8
 pick:-2
 picture:-7
 piec:-6
 piece~ for:-6
 piece~ of:7
 piec~ of:-2
 piec~0:-3
 pig:-10
 pilar:1
 pillowcase:-5
 pinch~ of:-4
 pink:2
 pitcher:-6
 place:3
 place~ of:5
 plain:-3
 plain~ white:-2
 plain~F:-5
 plain~W:6
 plan:-2
 plann~ to:1
 plan~ for:2
 plastic:2
 plastic~ cup:3
 plastic~ jug:4
 plate:1
 play:-5
 pleas:-5
 please:6
 please~ ?:3
 please~ be:-7
 please~ check:-2
 please~ dont:-9
 please~ look:-7
 please~ my:7
 please~ tell:1
 please~ verify:-8
 plenty:-6
 plenty~ for:-6
 plenty~ of:-3
 pls~ check:-3
 plumber:-5
 plus:3
 plus~ a:4
 plus~ an:4
 plus~ another:4
 plus~ the:6
 plus~0:-4
 plus~<:-7
 plus~=:-6
 plus~w:-8
 plz:-5
 pocket:1
 point:-2
 poland:-1
 polish:-1
 polypropylene:-5
 poor:-10
 popcorn:6
 pops:-3
 porch:-4
 porridge:2
 portion:-1
 possible:-6
 post:-3
 postage:-1
 postal:2
 postal~ scale:2
 postman:1
 post~ this:-7
 post~t:-2
 pot:1
 potato:-4
 potato~ then:-3
 pots:-3
 pot~ ::-6
 pot~ and:2
 pot~ at:-5
 pot~ for:-8
 pot~ holds:1
 pot~ i:-6
 pot~ is:-6
 pot~ of:-3
 pot~ off:-6
 pot~ oils:-8
 pot~ on:-1
 pot~ was:2
 pot~ with:1
 pot~0:-1
 pour:5
 pours:-8
 pour~ ::-3
 pour~ and:3
 pour~ at:-8
 pour~ cover:-1
 pour~ in:5
 pour~ into:-5
 pour~ it:1
 pour~ off:5
 pour~ on:2
 pour~ out:6
 pour~ the:-6
 pour~0:5
 pour~=:2
 pour~>:-7
 pour~A:-4
 pour~F:-1
 pour~t:-3
 pour~w:-11
 powder:6
 power:-1
 power~ cut:5
 pp:-6
 ppl:-8
 practical:-7
 prefer:4
 premix:-8
 prep:-2
 present:-2
 press:-4
 press~ in:-6
 press~ into:-4
 press~ it:-4
 press~0:-7
 pretty:-8
 previou:1
 pric:-5
 price:-6
 print:4
 printout:-6
 print~ on:1
 print~0:-9
 prob:4
 proces:-1
 proces~ ::-2
 proces~ crock:-3
 proces~ in:-2
 professor:3
 project:-6
 promis:-3
 proper:-4
 proud:-6
 ps:5
 pub:-4
 puck:-1
 pucks:-2
 puck~ dual:-5
 pudd:-6
 puddle:5
 pull:5
 pump:-2
 pupil:-1
 pure:1
 pure~F:-3
 purity:8
 push:-7
 put:3
 puts:-6
 put~ a:3
 put~ in:6
 put~ it:-3
 put~ the:1
 put~ them:-4
 put~ together:-5
 put~0:-2
 put~<:-8
 put~=:-8
 put~>:2
 put~F:3
 put~v:1
 q:-8
 qty:-4
 quantiti:6
 quantity:-4
 quantity~ of:-4
 quarter:8
 quarter~ of:6
 question:-4
 question~ ::-6
 question~ from:-4
 question~ is:-5
 question~ to:-1
 quick:-8
 quicker:-3
 quicker~ than:-4
 quick~ one:-4
 quite:2
 quot:-5
 q~ ::-3
 r:-2
 rack:-5
 rack~ and:-1
 radiator:-4
 radio:-7
 rain:-1
 rainy:-6
 rais:-6
 ran:4
 rancid:-1
 rancid~ so:7
 rang:5
 ran~ dry:2
 ran~ out:2
 ran~ short:5
 ran~ the:-7
 rate:-5
 rather:6
 rather~ have:-1
 rather~ than:3
 raw:3
 re:-3
 reach:-4
 reach~ the:7
 reach~d:-5
 reader:-2
 reads:3
 reads~ in:-6
 ready:4
 ready~ for:-5
 ready~ made:6
 ready~ mixed:3
 ready~ to:-8
 read~ it:-3
 read~ that:-4
 read~ the:-4
 read~ this:-3
 read~F:4
 read~b:-1
 real:2
 realis:6
 reality:3
 real~ have:-3
 real~A:-2
 real~N:5
 reason:-2
 rebatch:5
 recall:5
 receipt:8
 recheck:1
 recip:-7
 recipe:-2
 recipe~ ::-3
 recipe~ ?:-3
 recipe~ and:-5
 recipe~ card:-2
 recipe~ for:3
 recipe~ from:-6
 recipe~ i:-3
 recipe~ in:2
 recipe~ is:-2
 recipe~ of:-4
 recipe~ on:-4
 recipe~ was:2
 reckon:4
 reckon~ it:1
 reckon~ with:1
 record:-2
 record~0:-7
 red:2
 refill:2
 refin:2
 regard:-6
 remain:-7
 remainder:6
 remain~0:2
 remark:-7
 remark~ ::-2
 remember:3
 remember~ it:-7
 render:-9
 render~ and:1
 render~ it:4
 render~ the:-5
 render~ twice:-5
 render~=:-4
 render~w:-6
 repeat:-6
 replac:5
 replace:-6
 replace~ it:4
 replac~ by:6
 replac~ the:-1
 reply:-7
 report:-4
 rescu:1
 rescue:5
 rest:2
 rest~ is:-1
 rest~ was:1
 rest~t:-2
 retir:-7
 rev:-7
 rev~0:-7
 re~ ::-2
 ribbon:-4
 rice:-3
 rich:-10
 rid:-3
 rid~ of:-3
 right:-2
 right~ ?:-1
 right~ amount:-5
 right~ and:-5
 right~ at:2
 right~ before:1
 right~ but:7
 right~ for:-7
 right~ on:-5
 right~ or:-3
 right~ so:-4
 right~ to:-3
 right~ with:-8
 rim:-2
 ring:-7
 ring~t:-1
 rinse:-5
 rinse~ the:-2
 rins~ the:-2
 roast:-2
 rock:-7
 roll:-6
 roof:1
 room:-2
 room~ for:2
 room~ temp:-4
 room~ temperature:-1
 room~0:-5
 rough:3
 rough~d:-1
 rough~w:1
 round:1
 round~ and:-2
 round~ it:-2
 round~ the:2
 round~ to:4
 row:1
 row~0:6
 rspo:-7
 rubb:-2
 rugby:-2
 rugby~ club:-3
 ruin:-4
 rule:-10
 rules:2
 run:-2
 runn:-8
 runny:6
 runs:-2
 run~ out:-8
 run~ the:-2
 rush:-1
 rustic:-8
 ruth:1
 s0ap:-5
 s:-7
 sack:-3
 sack~ of:1
 safety:-2
 safe~ ?:-4
 safe~ side:3
 safe~ to:-3
 said~ a:3
 said~ it:-2
 said~ my:6
 said~ no:-7
 said~ so:-7
 said~ that:-3
 said~ the:-1
 said~ yes:-7
 said~0:2
 said~b:6
 salad:-6
 sale:-7
 salt:4
 same~ amount:7
 same~ as:-7
 same~ bar:-2
 same~ fats:1
 same~ for:-5
 same~ number:-9
 same~ oils:-4
 same~ recipe:5
 same~ thing:-4
 same~ weight:9
 same~F:-1
 same~b:6
 sample:-6
 sandpaper:-5
 sane:-4
 sane~ ?:-3
 sang:-8
 sanity:-5
 sanity~ check:-5
 saponification:2
 sat:1
 saturday:-1
 sat~ in:1
 sat~ on:-7
 sat~t:-3
 saucer:-5
 save:2
 saved:1
 saves:-5
 saw:8
 saw~ it:4
 saw~ the:7
 say:3
 says:4
 says~ ::-6
 says~ and:2
 says~ but:-5
 says~ i:1
 says~ it:-5
 says~ its:-5
 says~ min:9
 says~ my:-10
 says~ that:2
 says~ the:-1
 says~0:6
 says~>:4
 says~A:1
 says~F:-1
 says~b:-1
 says~e:4
 says~t:-1
 says~v:3
 says~w:3
 say~ a:6
 say~ it:-9
 say~ its:-4
 say~ thats:-5
 say~ the:-8
 say~%:4
 say~0:8
 say~F:-8
 say~b:7
 say~w:4
 scal:-2
 scale:5
 scale~ ::-4
 scale~ and:-10
 scale~ at:6
 scale~ but:-7
 scale~ died:5
 scale~ does:-9
 scale~ for:-8
 scale~ jumps:3
 scale~ only:5
 scale~ says:2
 scale~ shows:1
 scale~ switch:3
 scale~ that:-2
 scale~ was:5
 scale~ with:-2
 scale~w:-5
 scar:-4
 school:-4
 school~ fair:3
 science:-8
 scoop:7
 scorch:-3
 scrap:7
 scrap~ it:-2
 scrap~ the:7
 scratch:-12
 scribbl:-3
 scrubb:-6
 scrubb~ the:-5
 scum:2
 seal:-4
 season:4
 second:1
 second~ day:-6
 second~ half:3
 second~ one:-4
 second~ opinion:-4
 second~ pair:-1
 second~ time:3
 second~ try:-2
 secret:-6
 see:2
 seed:-4
 seem:9
 seems:-2
 seen:-2
 see~ a:-7
 see~ here:2
 see~ how:-6
 see~ if:-6
 see~ it:-11
 see~ me:-4
 see~ that:4
 see~ the:-1
 see~ through:-6
 see~ what:2
 seiz:-2
 self:-1
 sell:-8
 seller:3
 sells:4
 sells~ at:-3
 sell~ at:-1
 sense:2
 sensible:-5
 sensible~ ?:-4
 sensitive:3
 sent:4
 sent~ me:1
 separat:-7
 separate:-9
 september:-6
 serv:4
 set:2
 sets:-9
 sets~ in:-4
 sett:-2
 settl:-2
 set~ aside:-6
 set~ in:-8
 set~ it:7
 set~ on:-6
 set~ the:-4
 set~ to:3
 set~ up:-4
 sf:6
 shade:-4
 shampoo:1
 shampoo~ bar:-5
 shar:1
 share:5
 sharp:-1
 shav:-5
 shave:-7
 shave~ puck:-4
 shave~ soap:-3
 shav~ puck:-4
 shav~ soap:-1
 she:-6
 shed:-4
 sheep:-6
 sheet:2
 sheet~ ::-2
 sheet~ and:5
 sheet~ for:2
 sheet~ says:6
 sheet~0:-9
 shelf:-3
 shelf~ for:-2
 shes:-7
 shes~0:-3
 she~ also:3
 she~ alway:-2
 she~ asked:-5
 she~ did:-6
 she~ does:-3
 she~ gets:-7
 she~ got:-5
 she~ had:-7
 she~ has:-4
 she~ is:-6
 she~ made:-4
 she~ never:2
 she~ right:-2
 she~ said:-2
 she~ says:-3
 she~ stirr:-2
 she~ swear:-2
 she~ told:-2
 she~ used:-6
 she~ wants:4
 she~ weigh:-2
 she~ who:-1
 she~ wrote:1
 shift:-1
 shine:-8
 shiny:-9
 shoe:-3
 shoebox:-3
 shoebox~ lined:-2
 shoe~ box:-3
 shook:4
 shop:1
 shopp:-9
 shopp~ list:-5
 shops:-3
 shop~ and:5
 shop~ had:2
 shop~ soap:3
 short:3
 shortage:-5
 short~ ::3
 short~ burst:-1
 short~ of:-6
 short~ so:6
 should~ be:-2
 should~ come:1
 should~ i:-7
 should~ read:9
 should~ say:4
 shout:-7
 show:-4
 shower:-8
 shows~ whole:-8
 shows~0:-3
 shows~w:2
 show~b:1
 shrink:-8
 shut~ in:3
 shy:1
 side:-1
 sides:-5
 sideway:-7
 side~ of:4
 siev:-1
 siev~ it:-1
 sign:-4
 silicone:-8
 silicone~ loaf:-4
 silicone~ mould:-4
 sill:-6
 silly:10
 simmer:1
 simp:-1
 simple:-4
 since:4
 since~ about:-5
 since~ i:-2
 since~ it:5
 since~ last:1
 since~ my:6
 since~ spr:3
 since~ the:3
 since~ then:3
 since~0:-8
 since~F:2
 since~t:3
 sink:-2
 sink~ and:-3
 sink~ of:-4
 sink~ with:1
 sis:-3
 sister':3
 sister:-11
 sister~ in:-5
 sister~ says:-2
 sit:2
 sits~ in:-7
 sitt:2
 sitt~ in:-4
 sitt~ on:4
 size:2
 size~ of:-5
 skin:-2
 skin~ and:-3
 skin~ is:4
 skin~ off:-3
 skip:4
 skipp:10
 skipp~ it:6
 skipp~ the:9
 skip~ the:1
 skull:-7
 slab:-8
 sleep:-6
 sleev:-5
 slept:-4
 slic:-6
 slice:-6
 slid:-4
 slight:2
 slimy:-9
 slip:4
 slipp:11
 slipp~ and:8
 sliver:-6
 slosh:-2
 slow:-4
 slow~ cooker:-2
 slow~ into:-5
 slush:-8
 small:-3
 small~ print:5
 smell:-6
 smell~ a:-4
 smell~ faint:-5
 smell~ is:-6
 smell~ it:2
 smell~ like:-2
 smell~ of:-5
 smell~ the:-6
 smelt:4
 smoke:-5
 smooth:-10
 sneeze:-1
 sniff:2
 snow~ white:-3
 so:2
 soak:6
 soap':1
 soap:-8
 soaper:-7
 soaps:-8
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-5
 soap~ and:-3
 soap~ at:-7
 soap~ attempt:-2
 soap~ day:-2
 soap~ diary:-5
 soap~ for:-5
 soap~ from:-6
 soap~ i:-3
 soap~ in:-6
 soap~ is:-8
 soap~ like:-5
 soap~ my:-4
 soap~ of:-4
 soap~ on:-5
 soap~ paste:-1
 soap~ since:-5
 soap~ so:-1
 soap~ the:-2
 soap~ was:-5
 soap~ with:-5
 soap~0:-5
 soft:-6
 softer:1
 soft~ after:-3
 soft~ as:-6
 soft~ at:-3
 soft~ for:-3
 soft~ in:-4
 soft~ soap:-5
 sold:-7
 sold~ at:-3
 sold~ out:-4
 sold~0:-5
 soleseife:-6
 solid:-3
 solution:-1
 solution~ and:-1
 solution~ plus:-5
 some:3
 somebody:-2
 somebody~ asked:-5
 somebody~ check:-3
 somebody~ else:-4
 somebody~ here:1
 somebody~ look:-6
 somebody~ run:-6
 somebody~ tell:2
 somebody~ with:-3
 someone~ at:-5
 someone~ check:-1
 someone~ in:-6
 someone~ look:-8
 someone~ tell:4
 someone~ with:-6
 someth:1
 someth~ else:-1
 someth~ like:2
 somewhere:-1
 some~ of:3
 some~ people:-9
 some~0:-5
 some~F:-1
 some~N:6
 some~X:-3
 soon:-5
 sooner:-6
 sooner~ than:-6
 sorry:1
 sorry~ for:-4
 sorry~ it:-6
 sorry~ my:-5
 sorry~ the:4
 sort:4
 sort~ of:-5
 sound:-9
 sound~ like:-9
 sound~ right:3
 soup:-4
 source:5
 source~ ::5
 so~ ::-7
 so~ ?:2
 so~ a:1
 so~ all:2
 so~ another:6
 so~ before:-5
 so~ call:6
 so~ did:-3
 so~ do:-2
 so~ does:-4
 so~ dont:1
 so~ excuse:-7
 so~ far:-3
 so~ fast:-3
 so~ for:-6
 so~ good:5
 so~ half:2
 so~ here:-6
 so~ hot:-5
 so~ i'd:-6
 so~ i:-5
 so~ if:-4
 so~ im:1
 so~ in:4
 so~ is:2
 so~ it:2
 so~ its:6
 so~ ive:-5
 so~ just:4
 so~ keep:-6
 so~ little:-7
 so~ maybe:4
 so~ much:-5
 so~ my:3
 so~ no:3
 so~ noth:-1
 so~ now:-6
 so~ of:7
 so~ on:-4
 so~ please:1
 so~ sorry:-6
 so~ take:1
 so~ that:-6
 so~ thats:6
 so~ the:1
 so~ ther:2
 so~ there:-3
 so~ this:-4
 so~ those:2
 so~ um:3
 so~ we:-3
 so~ what:5
 so~ whats:4
 so~ who:3
 so~ you:-1
 so~%:-8
 so~0:6
 so~=:2
 so~F:-1
 so~N:12
 so~b:-2
 so~l:-8
 so~t:-3
 so~w:-4
 spa:3
 space:-6
 spain:-7
 spare:-3
 spatula:-7
 speak:-1
 speed:-6
 spell:-8
 spend:-8
 spent:1
 spill:-5
 spill~ on:1
 spilt:1
 splash:4
 splash~ of:2
 split:1
 split~ it:2
 spoonful:3
 spoonful~ in:1
 spoonful~ of:-2
 spoon~ and:2
 spoon~ at:-7
 spoon~ by:-7
 spoon~ for:2
 spoon~ in:-2
 spoon~ into:-4
 spoon~ it:-5
 spoon~ of:2
 spoon~ slipp:5
 spot:-8
 spots:-3
 spots~ after:-2
 spot~ on:-5
 spray:-7
 spreadsheet:-6
 sprinkl:-8
 sprinkle:-3
 sprinkle~ the:-3
 sprinkl~=:-1
 spr~ and:-1
 spr~ i:-1
 squeez:6
 sry:2
 stable:-7
 stack:-2
 stag:-8
 stage:-2
 stage~ at:-3
 stain:-8
 stainles:-5
 stamp:-12
 stamp~ and:-6
 stand:-6
 standard:-7
 stand~ ::-2
 stand~ at:-5
 stand~ for:-4
 stand~ it:5
 stand~ on:5
 stand~ the:-2
 stand~ there:-4
 stand~ up:1
 stank:-5
 start:-2
 start~ ::-4
 start~ and:-8
 start~ at:-2
 start~ the:-5
 start~ to:-7
 start~ with:6
 start~t:-5
 static:1
 stay:3
 stays:-5
 stays~ as:2
 stays~ in:-8
 stay~ a:1
 stay~ at:3
 stay~ cloudy:-2
 stay~ in:9
 stay~ on:3
 stay~ soft:-6
 steam:-13
 steel:-3
 steel~ jug:-8
 steel~ pot:-4
 step:-5
 steps:1
 steps~ of:5
 step~0:-1
 sticker:-3
 sticky:1
 stick~ blend:-3
 stick~ blender:-9
 stiff:5
 still:1
 still~ cloudy:1
 still~ good:5
 still~ got:-7
 still~ had:3
 still~ have:-1
 still~ in:4
 still~ like:-7
 still~ on:5
 still~ sitt:9
 still~ smell:-6
 still~ stand:3
 sting:-6
 stingy:2
 stink:-8
 stir:-4
 stirr~ and:-6
 stirr~ every:-7
 stirr~ for:-3
 stirr~ in:5
 stirr~ into:5
 stirr~ it:-7
 stirr~ one:-5
 stirr~ the:-1
 stirr~ with:-5
 stirr~t:-2
 stirs:-6
 stir~ by:-3
 stir~ every:-1
 stir~ in:-1
 stir~ it:2
 stir~ the:-11
 stir~ till:-3
 stir~ until:-3
 stir~ with:-4
 stir~0:-4
 stir~=:-3
 stir~t:-2
 stock:2
 stood:1
 stood~ at:3
 stood~ in:3
 stop:-7
 stopp:8
 stopp~ at:7
 stops:-4
 stor:-3
 store~ the:-7
 stove:5
 straight:-2
 straight~ away:-4
 straight~ from:-5
 straight~ into:-4
 straight~ out:3
 straight~ to:1
 strain:5
 strainer:-7
 strain~ it:-5
 strain~ the:-1
 strain~ twice:2
 streak:-6
 stream:-3
 street:-6
 strength:4
 stretch:4
 strike:3
 strip:-6
 stripp:1
 stripp~ the:-5
 strip~ says:-8
 strip~0:-2
 strong:4
 stronger:2
 strong~ ?:-8
 strong~ for:-5
 struck:5
 stuck:4
 stuck~ in:4
 stuck~ to:2
 student:-1
 stuff:-1
 style:-4
 subject:-3
 subject~ ::-3
 such:3
 suds:-6
 suits:-4
 sum:-1
 summer~ and:9
 sums:-3
 sun:2
 sunday:1
 sunday~ ::-6
 sunday~ and:1
 sunday~ in:-6
 sunday~ roast:1
 superfat:6
 superfat~ ::5
 superfat~ ?:-3
 superfat~ and:-6
 superfat~ at:1
 superfat~ do:-4
 superfat~ for:2
 superfat~ in:3
 superfat~ is:-12
 superfat~ of:-8
 superfat~ on:-11
 superfat~ should:-11
 superfat~ with:1
 superfat~%:3
 superfat~0:4
 supermarket:-5
 supplier:2
 suppos:-1
 suppose:-1
 suppos~ to:-1
 sure:3
 sure~ about:-10
 sure~ of:2
 surface:-6
 surviv:-1
 survive:-2
 suspect:5
 swap:-5
 swapp:7
 swapp~ for:1
 swapp~F:5
 swaps:-11
 swear:4
 swear~ by:-1
 swear~ it:-7
 swear~ to:7
 sweat:-8
 sweat~ in:-2
 sweet:-3
 swirl:-6
 swirl~ with:-4
 switch~ off:-2
 switch~ to:-7
 swore:-3
 t:-6
 ta:-5
 tabl:-6
 table:3
 tablespoon:4
 table~ is:-7
 table~0:-7
 tabs:-5
 taffy:-8
 tak:6
 take:2
 taken:3
 takes:-14
 takes~ about:-1
 takes~ its:-5
 takes~ the:-2
 takes~=:-1
 takes~t:-3
 take~ it:-7
 take~ off:-3
 take~ that:5
 take~ the:-6
 take~ your:3
 take~0:-7
 take~=:-4
 take~w:-9
 talk:-7
 tall:-7
 tan:-7
 tape:-8
 tare:-1
 tared:7
 target:2
 tast:-9
 taste:2
 taught:-7
 taught~ me:-4
 teach:-1
 teacher:-3
 team:-3
 technical:10
 technical~ grade:6
 telephone:-5
 tell:-2
 tells~ me:2
 tell~ me:1
 tell~ my:-8
 tell~ the:1
 tell~ them:-6
 tell~ you:-1
 temp:-5
 temper:1
 temperature:-9
 temps:-5
 temp~d:-2
 tenth:4
 tenth~ of:3
 term:-5
 test:-2
 tester:2
 test~ ::-5
 test~ at:-8
 test~ it:5
 test~ ok:-3
 test~ on:1
 test~ with:-6
 text:-3
 than:-1
 thank:-6
 thank~ for:-6
 thank~ to:-1
 thank~ you:-6
 than~ a:-2
 than~ i:2
 than~ it:3
 than~ my:1
 than~ that:-5
 than~ the:-4
 than~ usual:3
 than~0:1
 than~d:-5
 that:5
 thats:-1
 thats~ a:-7
 thats~ all:-4
 thats~ how:4
 thats~ it:-6
 thats~ my:-7
 thats~ the:-6
 thats~ what:6
 thats~ why:-8
 thats~>:-1
 thats~l:-10
 that~ ?:4
 that~ a:-7
 that~ about:-8
 that~ and:3
 that~ be:3
 that~ bit:4
 that~ came:-2
 that~ come:1
 that~ day:8
 that~ enough:-3
 that~ from:-7
 that~ has:-4
 that~ i'd:-5
 that~ i:1
 that~ im:2
 that~ in:-1
 that~ into:-2
 that~ is:1
 that~ isnt:2
 that~ it:-8
 that~ its:-4
 that~ look:-2
 that~ makes:-6
 that~ matter:4
 that~ mine:4
 that~ my:3
 that~ nobody:1
 that~ noth:-5
 that~ off:7
 that~ okay:-2
 that~ on:2
 that~ one:-4
 that~ out:5
 that~ right:-2
 that~ she:1
 that~ solution:-8
 that~ sound:-1
 that~ still:-5
 that~ the:3
 that~ ther:-6
 that~ too:-8
 that~ was:-7
 that~ we:-7
 that~ went:-3
 that~ with:2
 that~ you:-6
 that~0:9
 that~=:-6
 that~A:-1
 that~F:1
 that~L:3
 that~b:6
 the:1
 their:-5
 their~ own:2
 them:-2
 themselv:-1
 them~ ::-1
 them~ and:-5
 them~ for:1
 them~ in:1
 them~ is:-2
 them~ out:-4
 them~ to:-6
 them~ together:2
 them~0:-4
 them~t:-4
 then:-1
 then~ add:-4
 then~ at:-5
 then~ in:-5
 then~ into:-4
 then~ it:5
 then~ its:-7
 then~ like:-4
 then~ my:2
 then~ pour:-6
 then~ stir:-3
 then~ stirr:-2
 then~ the:-7
 then~ weigh:-7
 then~0:4
 then~<:1
 then~=:-4
 then~>:-2
 then~A:-6
 then~F:-4
 then~S:-3
 then~W:1
 then~e:-5
 then~t:-5
 then~v:6
 ther:4
 there:4
 thereabout:3
 therefore:4
 there~ ?:-7
 there~ and:2
 there~ are:-1
 there~ because:2
 there~ enough:-3
 there~ may:3
 there~ so:-7
 there~ too:4
 there~ was:-2
 there~ were:3
 there~ with:-3
 thermometer:-9
 ther~ a:1
 ther~ also:2
 ther~ no:-7
 ther~0:3
 ther~F:1
 these:-9
 these~ are:-5
 these~ days:4
 these~ fats:-4
 these~ oils:-3
 they:-4
 theyd:4
 theyll:-3
 theyre:-10
 they~ are:5
 they~ do:-7
 they~ say:2
 they~ went:1
 they~ were:-5
 the~ above:4
 the~ amount:-2
 the~ answer:-3
 the~ app:3
 the~ attic:-3
 the~ autumn:-8
 the~ back:1
 the~ bag:3
 the~ balance:-4
 the~ balcony:2
 the~ bar:2
 the~ bars:-11
 the~ batch:-3
 the~ bath:-7
 the~ bathroom:1
 the~ batter:-8
 the~ battery:-1
 the~ beaker:4
 the~ beginn:-1
 the~ bell:-9
 the~ bench:-5
 the~ best:-5
 the~ big:-1
 the~ bin:-2
 the~ birds:-3
 the~ bit:-4
 the~ blender:3
 the~ block:4
 the~ blog:-5
 the~ blue:2
 the~ board:4
 the~ book:-4
 the~ bottl:-6
 the~ bottle:4
 the~ bottom:-1
 the~ bowl:6
 the~ box:1
 the~ boys:3
 the~ brim:-2
 the~ bubbl:-5
 the~ bucket:2
 the~ bus:-1
 the~ butcher:-1
 the~ can:1
 the~ candle:-5
 the~ canister:7
 the~ car:-8
 the~ card:-5
 the~ caretaker:-7
 the~ cat:1
 the~ cellar:-9
 the~ certifi:-7
 the~ certificate:5
 the~ cheap:-6
 the~ chemist:-3
 the~ children:2
 the~ choir:-5
 the~ christma:1
 the~ church:-4
 the~ class:-5
 the~ clean:-2
 the~ clock:-4
 the~ club:-2
 the~ clubs:-2
 the~ cold:2
 the~ column:-3
 the~ comma:4
 the~ comment:-6
 the~ cool:-4
 the~ corner:-4
 the~ counter:4
 the~ county:-4
 the~ course:2
 the~ crock:-1
 the~ crockpot:-1
 the~ crumb:1
 the~ cubes:-6
 the~ cup:-2
 the~ cupboard:-2
 the~ cure:-9
 the~ date:-6
 the~ day:-3
 the~ decimal:-4
 the~ discount:-2
 the~ dish:5
 the~ display:1
 the~ dog:2
 the~ door:-1
 the~ dot:-5
 the~ doubl:-7
 the~ drain:3
 the~ drum:8
 the~ edge:-3
 the~ edges:-2
 the~ empty:-8
 the~ end:3
 the~ ends:-7
 the~ even:-8
 the~ extra:-1
 the~ face:-4
 the~ fair:-1
 the~ fami:2
 the~ farm:1
 the~ fat:-6
 the~ fats:1
 the~ feed:3
 the~ fence:-5
 the~ figur:-6
 the~ figure:3
 the~ finish:-2
 the~ first:-2
 the~ flak:5
 the~ flat:-3
 the~ floor:6
 the~ foam:-8
 the~ freezer:-11
 the~ fridge:-1
 the~ fryer:1
 the~ full:3
 the~ fumes:-7
 the~ funnel:3
 the~ garage:-7
 the~ garden:-3
 the~ gas:-5
 the~ gel:1
 the~ glass:1
 the~ goat:4
 the~ goats:4
 the~ goggl:-4
 the~ good:-4
 the~ gram:-6
 the~ greasy:-8
 the~ green:-1
 the~ group:-1
 the~ half:6
 the~ hall:-6
 the~ hand:-5
 the~ handout:2
 the~ hands:-2
 the~ hard:-5
 the~ heat:-8
 the~ hens:-7
 the~ hob:-2
 the~ holiday:-3
 the~ hood:-6
 the~ hot:2
 the~ house:7
 the~ internet:-3
 the~ jars:-6
 the~ jug:-3
 the~ kettle:7
 the~ kids:-4
 the~ kilo:6
 the~ kitchen:-3
 the~ label:4
 the~ lads:-3
 the~ lady:-3
 the~ last:2
 the~ lather:-1
 the~ laundry:3
 the~ leaflet:2
 the~ leftover:-1
 the~ letter:2
 the~ library:-6
 the~ lid:2
 the~ light:-5
 the~ line:6
 the~ liquid:6
 the~ list:10
 the~ litre:6
 the~ little:1
 the~ loaf:-4
 the~ long:3
 the~ look:-2
 the~ lot:3
 the~ lowest:-5
 the~ lump:1
 the~ machine:-5
 the~ man:-3
 the~ margin:-1
 the~ mark:5
 the~ market:-4
 the~ mash:-1
 the~ mass:-4
 the~ measur:2
 the~ mechanic:4
 the~ melt:-3
 the~ mess:-4
 the~ microwave:1
 the~ middle:-6
 the~ mill:-5
 the~ miss:5
 the~ mix:5
 the~ mold:2
 the~ month:-5
 the~ moon:-5
 the~ morn:-6
 the~ most:-9
 the~ mould:-3
 the~ name:-6
 the~ neighbour:-2
 the~ next:-4
 the~ night:-6
 the~ normal:-5
 the~ number:2
 the~ oil:2
 the~ oils:1
 the~ ones:-4
 the~ only:-7
 the~ open:2
 the~ order:-7
 the~ original:2
 the~ other:2
 the~ oven:-9
 the~ packet:7
 the~ page:-5
 the~ pan:4
 the~ pantry:-9
 the~ paper:9
 the~ parish:-7
 the~ past:1
 the~ paste:-4
 the~ phone:3
 the~ photo:4
 the~ picture:-4
 the~ place:7
 the~ plain:-5
 the~ plan:1
 the~ plastic:5
 the~ plate:3
 the~ point:-2
 the~ porch:-4
 the~ post:1
 the~ postman:2
 the~ potato:-8
 the~ pour:-4
 the~ powder:4
 the~ power:-4
 the~ present:2
 the~ price:-7
 the~ printout:-6
 the~ question:-9
 the~ rack:-4
 the~ radiator:-4
 the~ radio:-5
 the~ rain:-4
 the~ ready:6
 the~ real:-9
 the~ reason:-7
 the~ record:1
 the~ remain:-1
 the~ render:-4
 the~ right:-7
 the~ roof:2
 the~ room:1
 the~ row:-6
 the~ rugby:-2
 the~ sack:-2
 the~ safe:3
 the~ salad:2
 the~ scale:-2
 the~ school:1
 the~ scum:2
 the~ second:3
 the~ sf:-5
 the~ shed:-2
 the~ sheet:8
 the~ shelf:-3
 the~ shop:3
 the~ shops:-5
 the~ shower:-8
 the~ side:5
 the~ sink:1
 the~ size:1
 the~ skin:-4
 the~ slip:-3
 the~ slow:-4
 the~ small:2
 the~ smell:1
 the~ soap':3
 the~ soap:-2
 the~ solution:1
 the~ spatula:-2
 the~ spoon:-1
 the~ spr:-7
 the~ stall:2
 the~ steel:1
 the~ step:-1
 the~ stick:-10
 the~ stirr:-6
 the~ stove:6
 the~ sum:-2
 the~ sums:1
 the~ sun:2
 the~ sunday:6
 the~ superfat:-5
 the~ supermarket:-4
 the~ surface:-6
 the~ swirl:-3
 the~ table:3
 the~ tap:-4
 the~ teacher:-2
 the~ temperature:-5
 the~ test:1
 the~ thermometer:-6
 the~ thing:-2
 the~ thread:-6
 the~ thursday:-7
 the~ tiles:5
 the~ time:1
 the~ tin:5
 the~ tongue:-1
 the~ top:-2
 the~ train:-7
 the~ tray:-3
 the~ trimming:1
 the~ tub:2
 the~ unrefin:-7
 the~ usual:5
 the~ varnish:-5
 the~ very:-2
 the~ village:-2
 the~ wall:-6
 the~ war:-7
 the~ wardrobe:-3
 the~ warm:2
 the~ wash:-4
 the~ way:4
 the~ weather:-6
 the~ weekend:-9
 the~ weigh:7
 the~ weight:5
 the~ whisk:1
 the~ white:1
 the~ whole:-1
 the~ window:-6
 the~ windowsill:3
 the~ winter:-4
 the~ wood:-3
 the~ wooden:-4
 the~ word:-5
 the~ workshop:-4
 the~ worktop:-1
 the~ wrong:5
 the~ yard:-5
 the~ year:-7
 the~%:1
 the~0:1
 the~<:-4
 the~=:-2
 the~>:-1
 the~A:2
 the~B:-7
 the~C:-13
 the~F:5
 the~I:3
 the~K:4
 the~L:-2
 the~M:3
 the~N:-2
 the~S:-2
 the~T:-7
 the~W:5
 the~X:-4
 the~b:6
 the~e:-1
 the~t:-1
 the~v:-6
 the~w:-6
 thick:-3
 thicken:-3
 thicker:-9
 thick~ as:1
 thick~ like:-5
 thick~ trace:-2
 thin:-6
 thing:-2
 thing~ ?:-7
 thing~ and:-2
 thing~ i:-9
 thing~ in:-7
 think:1
 think~ ?:-8
 think~ about:2
 think~ i:10
 think~ it:3
 think~ its:-1
 think~ my:1
 think~ of:-8
 think~ that:-9
 think~ the:4
 thinn:6
 thin~ stream:-3
 thin~ trace:-6
 third:1
 third~ attempt:-5
 third~ go:4
 third~ of:1
 this:3
 this~ ::3
 this~ ?:-7
 this~ a:-5
 this~ and:-7
 this~ at:1
 this~ batch:-2
 this~ be:-2
 this~ before:-4
 this~ for:6
 this~ from:3
 this~ house:4
 this~ i:-3
 this~ in:-1
 this~ is:-5
 this~ loaf:2
 this~ morn:2
 this~ ok:-3
 this~ on:-7
 this~ one:6
 this~ ones:3
 this~ or:-6
 this~ pot:3
 this~ recipe:-7
 this~ right:-2
 this~ time:4
 this~ to:-6
 this~ was:-4
 this~ way:-4
 this~ week:-1
 this~ weekend:2
 this~ with:-6
 this~ year:5
 this~0:-8
 this~F:3
 tho:-6
 those~ are:2
 those~ days:-7
 those~ fats:-2
 those~ oils:-2
 those~ who:4
 those~0:4
 those~w:1
 though:1
 thought~ ?:-4
 thought~ i'd:-6
 thought~ i:-1
 thought~ it:-3
 thought~ on:-6
 though~ i:2
 thread:-6
 threw:6
 threw~ in:6
 threw~ the:-4
 through:1
 through~ a:-2
 through~ an:-10
 through~ it:-3
 through~ the:4
 throw:-4
 thrown:5
 throw~ it:-1
 thumb:-2
 thursday:-6
 thx:-5
 tick:-1
 tight:-1
 til:-5
 tiles:5
 till~ it:4
 till~ its:-2
 till~0:-5
 time:-3
 timer:-8
 times:2
 times~ i:4
 times~ in:-3
 times~ the:1
 times~0:9
 time~ and:-4
 time~ because:1
 time~ for:1
 time~ i:-1
 time~ in:2
 time~ it:-8
 time~ lurker:-4
 time~ post:-3
 time~ so:4
 time~ the:1
 time~ to:-4
 time~ with:-8
 time~0:-1
 time~t:-5
 tins:-7
 tins~ of:-3
 tiny:-1
 tin~ and:-1
 tin~ is:-7
 tin~ of:-4
 tin~ was:-1
 tin~ with:-9
 tip:-1
 tipp:8
 tipp~ in:7
 tipp~ the:-3
 tips:-6
 tip~ ::-6
 title:-3
 title~ ::-4
 to:-1
 toast:-4
 today:-4
 today~ ::5
 today~ ?:-5
 today~ and:1
 toddler:4
 together~ ?:-3
 together~ in:-4
 together~ with:-5
 told:-5
 told~ her:-4
 told~ me:-3
 told~ us:-7
 told~F:-2
 tom:-1
 tomato:4
 tomorrow:-5
 tongue:-3
 tongue~ test:1
 tonight:7
 tonight~ ::-7
 tonight~ ?:-3
 too:3
 took:3
 took~ a:-5
 took~ ages:-3
 took~ it:-2
 took~ me:-7
 took~ near:-1
 took~ off:2
 took~ the:3
 took~0:-2
 took~<:2
 took~=:-9
 took~>:-7
 took~N:4
 took~l:3
 took~t:-11
 took~w:-5
 tools:-6
 too~ ?:-7
 too~ and:2
 too~ cold:-3
 too~ dry:-3
 too~ early:-6
 too~ fast:1
 too~ hard:-3
 too~ harsh:-3
 too~ high:-6
 too~ hot:-7
 too~ late:-3
 too~ little:1
 too~ low:5
 too~ many:5
 too~ much:-6
 too~ quick:4
 too~ sharp:-4
 too~ soft:-5
 too~ soon:-5
 too~ strong:-2
 topp:8
 topp~ it:4
 topp~ the:5
 topp~ up:5
 tops:1
 top~ is:-4
 top~ of:2
 top~ shelf:-6
 top~ which:-5
 total~ of:-8
 touch:-4
 touch~ it:-7
 touch~ the:-7
 towel:-5
 towel~ and:-1
 towel~ over:-4
 towel~ round:-6
 town:1
 to~ a:2
 to~ about:-1
 to~ add:-1
 to~ ask:-5
 to~ be:4
 to~ bed:-4
 to~ buy:-5
 to~ check:-6
 to~ come:5
 to~ cool:-9
 to~ cut:-5
 to~ do:-1
 to~ everyone:3
 to~ find:-4
 to~ finish:6
 to~ get:-3
 to~ go:-2
 to~ grate:-1
 to~ hand:1
 to~ have:4
 to~ hear:1
 to~ help:6
 to~ her:-6
 to~ hold:3
 to~ it:1
 to~ keep:-6
 to~ know:-5
 to~ light:-2
 to~ look:-8
 to~ make:1
 to~ me:-1
 to~ melt:-10
 to~ my:1
 to~ open:-6
 to~ pour:-3
 to~ put:3
 to~ remember:-8
 to~ rough:-2
 to~ see:1
 to~ self:-1
 to~ sell:-2
 to~ set:3
 to~ slush:-8
 to~ soap:-7
 to~ someth:-5
 to~ spare:-1
 to~ spoon:-5
 to~ take:4
 to~ tell:-2
 to~ test:-6
 to~ that:-6
 to~ the:-2
 to~ thicken:-3
 to~ this:-9
 to~ throw:-4
 to~ trace:-9
 to~ try:-4
 to~ unmould:-5
 to~ use:-2
 to~ wait:2
 to~ wash:2
 to~ waste:5
 to~ weigh:-6
 to~ you:-6
 to~%:4
 to~<:6
 to~=:-2
 to~>:5
 to~F:-9
 to~T:-4
 to~X:-4
 to~b:-2
 to~d:-4
 to~e:-3
 to~t:2
 to~w:-6
 trac:-9
 trace:1
 trace~ ::-5
 trace~ add:4
 trace~ after:-7
 trace~ and:-7
 trace~ at:-2
 trace~ because:6
 trace~ came:-5
 trace~ i:-5
 trace~ in:-6
 trace~ stir:-6
 trace~ then:-2
 trace~ was:-5
 trace~t:-6
 tractor:-5
 trac~ after:-3
 trac~ in:-3
 trade:-9
 trail:-4
 train:-8
 translat:-4
 translate:-5
 translat~ from:-3
 translucent:-3
 tray:-5
 trays:-4
 trees:1
 trial:-8
 trick:-8
 trick~ for:-5
 tried:-9
 tried~ it:1
 trimm:1
 trimming:-1
 tripl:-7
 trouble:-3
 trust:-6
 trust~ it:-6
 trust~ the:-5
 truth:1
 try:-13
 try~ it:-6
 try~ to:-2
 tub:-1
 tube:-5
 tubs:2
 tub~ ::-7
 tub~ and:-8
 tub~ is:-5
 tub~ of:-4
 tub~ says:-7
 tub~ was:1
 tue:-1
 tue~t:-1
 turn:-2
 turns:-1
 turns~ out:7
 turns~0:-4
 turn~ it:-1
 turn~ out:6
 turn~ the:-3
 turn~ to:1
 turn~S:-4
 tutor:-2
 twentieth:4
 twice:2
 twice~ a:-5
 twice~ and:4
 twice~ before:-9
 twice~ i:3
 twice~ with:-6
 typ:-7
 type:3
 typed:7
 typed~ the:6
 typo:2
 u:-8
 ugh:-1
 ugly:-5
 um:2
 uncl:-7
 uncle:-3
 under:-3
 underneath:-6
 understand:-6
 under~ a:-2
 under~ it:4
 under~ the:2
 under~0:-9
 under~d:-3
 under~t:-3
 under~w:-7
 unit:-3
 units:-7
 unit~ ::-2
 unmold:-6
 unmould:-7
 unmould~ after:-4
 unmould~t:-1
 unrefin:-8
 unsaponifi:8
 unscent:-8
 until~ a:-5
 until~ both:-1
 until~ i:-1
 until~ it:-1
 until~ its:-3
 until~ the:4
 until~ you:-3
 until~t:-1
 up:5
 update:4
 upon:2
 up~ ::2
 up~ ?:-6
 up~ again:-8
 up~ and:1
 up~ at:-1
 up~ by:3
 up~ for:-7
 up~ i:-7
 up~ in:-5
 up~ like:-5
 up~ on:7
 up~ so:1
 up~ the:3
 up~ there:5
 up~ to:4
 up~ with:2
 up~0:10
 ur:-7
 use:-2
 used:2
 used~ a:-1
 used~ for:1
 used~ it:1
 used~ that:5
 used~ the:7
 used~ to:-9
 used~0:-3
 used~=:-7
 used~>:-3
 used~F:-5
 used~L:4
 used~N:-3
 used~l:-2
 used~w:-2
 uses:-3
 use~ ?:-2
 use~ a:-1
 use~ in:-5
 use~ it:-1
 use~ the:-6
 use~ up:6
 use~=:1
 use~>:2
 use~F:-8
 use~I:-5
 use~N:-2
 use~l:-2
 using:2
 usual:3
 us~ the:-2
 vanish:-5
 varnish:-5
 vegan:-9
 vegetable:-4
 vegetarian:-9
 verdict:-4
 verify:-7
 verify~ the:-6
 version:-5
 version~ ::-1
 version~ with:-1
 version~0:3
 very~ first:-7
 very~ nice:-5
 vet:-7
 video:-6
 village:-3
 village~ hall:-1
 virgin:-7
 voice:4
 volcano:-9
 volume:1
 w:1
 wait:-4
 waits:2
 wait~ for:-7
 wait~ i:-7
 wait~ till:-2
 wait~ until:-7
 wait~t:-3
 walk:5
 wall:-3
 want:4
 wants:-4
 wants~ a:-4
 wants~ it:-6
 wants~ me:-3
 wants~ some:-1
 wants~ the:-7
 wants~ to:-4
 want~ a:-3
 want~ it:1
 want~ the:7
 want~ to:-3
 want~%:2
 want~0:6
 want~F:-7
 war:-8
 wardrobe:-6
 warm:-7
 warmth:-7
 warm~ in:-5
 warm~ it:-3
 warm~ oils:2
 warm~ the:-11
 warm~ to:-6
 warm~F:-3
 warn:-7
 was:5
 wash:-6
 wash~ it:2
 wash~ up:-1
 wash~ with:-6
 wasnt:12
 wast:3
 waste:-1
 was~ a:-1
 was~ all:3
 was~ already:5
 was~ at:-6
 was~ call:1
 was~ clean:-2
 was~ clear:-5
 was~ cold:3
 was~ done:1
 was~ empty:11
 was~ fine:-2
 was~ finish:4
 was~ for:-3
 was~ from:1
 was~ going:-7
 was~ gone:-3
 was~ hard:-7
 was~ hot:-3
 was~ in:3
 was~ it:-4
 was~ like:2
 was~ made:-2
 was~ meant:4
 was~ melt:4
 was~ my:-3
 was~ near:3
 was~ never:-2
 was~ no:-2
 was~ not:9
 was~ off:9
 was~ old:-5
 was~ on:4
 was~ one:5
 was~ only:1
 was~ open:3
 was~ out:6
 was~ over:2
 was~ pour:2
 was~ ready:-3
 was~ real:5
 was~ right:-5
 was~ so:5
 was~ stand:7
 was~ still:1
 was~ stirr:-3
 was~ that:-4
 was~ the:-3
 was~ thick:-5
 was~ told:2
 was~ too:-5
 was~ under:-6
 was~ very:-7
 was~ warm:-6
 was~ weigh:5
 was~ what:-4
 was~ with:2
 was~%:-5
 was~0:-4
 was~<:5
 was~=:-7
 was~>:-8
 was~A:5
 was~F:3
 was~L:5
 was~N:2
 was~X:7
 was~b:-1
 was~d:-7
 was~e:7
 was~l:-8
 was~t:-6
 was~v:2
 was~w:6
 watch:-7
 watch~ the:-8
 water:-4
 water~ bath:-4
 waxy:-5
 way:2
 way~ about:1
 way~ in:6
 way~ of:-7
 we:1
 wear:-7
 wear~ goggl:-5
 weather:-6
 wed:1
 wedd:2
 wedd~ favour:1
 wednesday:-7
 week:-5
 weekend:-2
 weeks:1
 week~ and:-7
 week~ so:5
 week~0:-9
 weight:1
 weight~ ::-8
 weight~ and:2
 weight~ g:-3
 weight~ in:4
 weight~ made:-7
 weight~ of:-3
 weight~ oz:-5
 weight~ so:-6
 weight~A:-4
 weigh~ ?:-7
 weigh~ a:-5
 weigh~ after:-3
 weigh~ again:4
 weigh~ and:1
 weigh~ anyth:-1
 weigh~ as:3
 weigh~ by:5
 weigh~ everyth:-7
 weigh~ i:-6
 weigh~ in:1
 weigh~ it:3
 weigh~ like:1
 weigh~ my:2
 weigh~ on:2
 weigh~ one:3
 weigh~ out:-8
 weigh~ the:2
 weigh~0:2
 weigh~<:-8
 weigh~=:-7
 weigh~F:-4
 weigh~e:6
 weigh~l:-1
 weigh~w:-8
 welcome:-5
 well:-1
 well~ and:-5
 well~ as:-4
 well~ be:8
 well~ have:7
 went:3
 went~ a:5
 went~ above:-7
 went~ away:-7
 went~ back:-3
 went~ brown:-6
 went~ by:-4
 went~ clear:-7
 went~ cloudy:-7
 went~ dark:-2
 went~ down:6
 went~ for:3
 went~ from:-9
 went~ in:8
 went~ into:4
 went~ off:-1
 went~ on:4
 went~ over:3
 went~ the:-5
 went~ to:-5
 went~ up:1
 went~ with:4
 went~ without:5
 went~ wrong:-4
 went~=:-7
 went~S:-2
 were:3
 were~ a:-1
 were~ at:-6
 were~ doing:-1
 were~ on:-6
 were~0:2
 were~F:2
 were~w:-2
 wet:7
 wet~ cloth:-4
 wet~ dog:-3
 weve:-3
 we~ are:-1
 we~ count:-6
 we~ cut:-6
 we~ did:4
 we~ do:3
 we~ got:-7
 we~ had:1
 we~ have:-4
 we~ keep:-6
 we~ made:-7
 we~ make:1
 we~ put:-7
 we~ render:-2
 we~ say:5
 we~ use:-9
 we~ used:-3
 we~ want:4
 we~ weigh:1
 we~ went:-2
 we~ were:4
 what:4
 whatever:6
 whatever~ the:8
 whatever~ was:11
 whats:1
 whats~ in:2
 whats~ the:-4
 what~ a:-7
 what~ came:5
 what~ did:-4
 what~ do:1
 what~ does:-7
 what~ g:-4
 what~ happen:-7
 what~ how:-8
 what~ i'd:3
 what~ i:9
 what~ im:4
 what~ is:-4
 what~ it:3
 what~ my:-2
 what~ remain:1
 what~ she:-5
 what~ superfat:-10
 what~ they:5
 what~ was:-4
 what~ we:-2
 what~ would:-7
 what~ you:-2
 what~ youd:-1
 when:-1
 whenever:-1
 when~ both:-6
 when~ cut:-7
 when~ i:1
 when~ it:1
 when~ its:1
 when~ she:1
 when~ the:1
 when~ wash:5
 when~ you:2
 when~F:-9
 where:3
 where~ i:-4
 where~ it:7
 where~ she:-7
 where~ the:2
 where~ you:3
 whether:-3
 whether~ it:-4
 whether~ the:2
 whether~F:-9
 whether~b:-4
 which:2
 which~ bring:-1
 which~ has:-1
 which~ i:6
 which~ is:-4
 which~ makes:-4
 which~ of:2
 which~ one:7
 which~ the:2
 which~ was:-4
 which~F:-8
 while:-2
 while~ i:5
 while~ the:-7
 whipp:1
 whisk:-6
 white:-9
 whiter:-4
 white~ and:2
 white~ as:-7
 white~ powder:-4
 white~ spots:-3
 white~F:-2
 who:-2
 whoever:-1
 whole~ grams:-8
 whole~ thing:3
 whole~ time:-2
 whos:-3
 whose:3
 whos~ right:-3
 who~ asked:-6
 who~ cant:2
 who~ has:-3
 who~ is:-4
 who~ knows:3
 who~ taught:-1
 why:-9
 why~ ?:-4
 why~ does:-4
 why~ i:-6
 why~ it:-6
 why~ its:-5
 why~ the:-7
 why~F:-3
 width:-3
 wife:-1
 wifes:-2
 wife~ likes:-7
 wife~ says:2
 will:-7
 will~ ask:1
 will~ be:-7
 will~ climb:-5
 will~ do:-5
 will~ it:-3
 will~ need:-2
 will~ that:-3
 will~ the:-7
 will~ this:-2
 wind:-5
 window:-10
 windowsill:2
 window~ open:-7
 winter:-5
 winter~ and:4
 winter~ bar:-1
 winter~ hands:-6
 winter~ i:-4
 wipe:-5
 wiped:-2
 wire:-4
 wish:3
 within:-9
 within~t:-7
 without:6
 without~ a:-10
 without~ it:5
 without~ my:-3
 without~ the:1
 without~F:-4
 with~ a:-2
 with~ all:-6
 with~ an:-4
 with~ bak:-4
 with~ both:-3
 with~ everyth:5
 with~ freezer:-4
 with~ glov:-2
 with~ goggl:-3
 with~ it:-2
 with~ its:-3
 with~ more:4
 with~ my:-8
 with~ noth:4
 with~ one:2
 with~ only:-7
 with~ some:1
 with~ that:3
 with~ the:2
 with~ this:2
 with~ us:-4
 with~ wet:-4
 with~ what:1
 with~%:8
 with~0:-3
 with~<:-3
 with~=:-3
 with~>:-6
 with~C:2
 with~F:-7
 with~I:-4
 with~L:-7
 with~N:1
 with~S:-9
 with~U:1
 with~W:2
 with~b:1
 with~e:-6
 with~l:-9
 with~w:3
 woman:-9
 woman~ at:-2
 women:-4
 wonder:6
 wonky:-7
 wont:-2
 wood:-8
 wooden:-3
 wooden~ box:-3
 wooden~ mould:-6
 wooden~ one:-6
 wooden~ spoon:1
 wood~ stove:-3
 word:1
 words:-6
 word~ for:-7
 work:-3
 works:-7
 worksheet:-3
 workshop:-4
 worktop:-1
 work~ ?:-2
 work~ in:2
 work~ it:3
 work~ out:-5
 work~ with:3
 worri:2
 worry~ is:2
 worth:1
 worth~ of:4
 would:-2
 wouldnt:3
 wouldnt~ dissolve:8
 would~ a:-3
 would~ be:-3
 would~ do:-8
 would~ have:-3
 would~ it:-1
 would~ like:3
 would~ love:1
 would~ not:-3
 would~ say:1
 would~ somebody:1
 would~ the:-8
 would~ you:3
 wrap:-6
 wrapp:-11
 wrapper:-7
 wrapp~ in:-6
 wrapp~ it:-4
 wrap~ in:-1
 wrist:-5
 writ:-3
 write:-6
 write~ down:-4
 write~ the:-7
 write~ up:-5
 written:2
 written~ ?:-6
 written~ on:-5
 wrong~ ?:-5
 wrong~ with:-7
 wrote~ ::-4
 wrote~ in:-1
 wrote~ it:4
 wrote~ on:-6
 wrote~ that:-5
 wrote~ this:-2
 wrote~F:3
 wt:-7
 w~ a:-7
 w~ my:-1
 w~ w:1
 w~=:-3
 x:2
 xmas:2
 x~0:3
 x~F:-10
 yall:-7
 yard:-8
 year:-7
 years:-6
 years~ ago:-2
 year~ and:1
 year~ i:-7
 year~ in:-4
 year~ is:5
 year~0:-5
 yellow:-10
 yes:-3
 yesterday:-6
 yes~ its:-7
 yes~ no:-2
 yes~ or:-1
 yes~ the:-1
 yet:6
 yield:2
 yield~0:3
 you:-3
 youd:-4
 youll:-3
 youll~ want:1
 young:-3
 your:-9
 youre:-8
 yours:-1
 your~ arm:-2
 your~ own:2
 your~ skin:-6
 your~A:-4
 your~F:-4
 youve:-11
 you~ ?:-2
 you~ all:-7
 you~ and:-4
 you~ are:-4
 you~ ask:4
 you~ asked:-3
 you~ call:-9
 you~ can:-2
 you~ cant:-7
 you~ check:-4
 you~ could:-11
 you~ cut:-3
 you~ do:1
 you~ dont:-7
 you~ feel:-2
 you~ for:-7
 you~ get:-3
 you~ go:-6
 you~ know:5
 you~ like:-7
 you~ look:-4
 you~ lot:-2
 you~ make:-6
 you~ need:-8
 you~ pour:-8
 you~ put:-8
 you~ read:2
 you~ see:2
 you~ should:4
 you~ start:-5
 you~ tell:2
 you~ think:-3
 you~ to:-5
 you~ trust:-1
 you~ use:-4
 you~ wait:-1
 you~ want:-9
 you~ weigh:-7
 you~ will:2
 you~ wont:1
 you~ work:-2
 zap:-8
 zapp:7
 zappy:-3
 zaps:1
 zap~ test:-5
 zero:4
 zero~ the:5
 üf:-8
%%:-3
%0:-9
%:7
%<:-6
%=:-1
%>:-9
%A:6
%F:-2
%K:-7
%N:3
%S:-6
%W:1
%X:1
%l:-2
%t:-4
%w:3
%~ ?:-2
%~ and:-3
%~ by:3
%~ extra:7
%~ flak:2
%~ for:9
%~ in:-1
%~ is:-2
%~ less:-4
%~ liquid:4
%~ of:1
%~ off:-1
%~ on:5
%~ or:3
%~ over:4
%~ pure:-6
%~ purity:-5
%~ sf:-5
%~ so:4
%~ solution:-3
%~ superfat:3
%~=:-5
%~A:3
%~F:-5
%~K:-7
%~N:1
%~W:-4
%~X:2
0%:-6
00:-5
0:4
0<:-3
0=:1
0>:-3
0A:-1
0C:5
0F:-2
0I:3
0K:-8
0M:5
0N:4
0S:-3
0T:2
0W:4
0X:-7
0b:-2
0d:-3
0l:-2
0r:-1
0t:-6
0v:-8
0w:-5
0~ =:-6
0~ ?:2
0~ a:-10
0~ after:2
0~ all:6
0~ are:3
0~ as:6
0~ at:-1
0~ b:-8
0~ bar:-6
0~ bars:-6
0~ batch:-3
0~ because:8
0~ before:3
0~ big:-4
0~ block:2
0~ both:-3
0~ bottl:-7
0~ bucket:-5
0~ c:-4
0~ cakes:-2
0~ caviti:-4
0~ children:-5
0~ comment:-3
0~ cut:3
0~ degre:-4
0~ drops:-6
0~ empty:2
0~ evening:-4
0~ except:6
0~ fat:-3
0~ fats:-11
0~ for:-7
0~ from:4
0~ full:-6
0~ gives:-6
0~ goats:-8
0~ goes:-3
0~ group:-4
0~ guest:-5
0~ had:-9
0~ i:6
0~ if:-3
0~ in:-2
0~ into:3
0~ is:2
0~ it:-2
0~ jars:-2
0~ kitchen:-5
0~ lather:-3
0~ left:-8
0~ little:-8
0~ loaf:-3
0~ lyes:-8
0~ made:-7
0~ more:-6
0~ my:6
0~ n:-2
0~ night:-5
0~ no:5
0~ not:4
0~ now:1
0~ of:3
0~ off:-2
0~ oil:-7
0~ oils:-4
0~ on:7
0~ once:3
0~ one:-3
0~ or:5
0~ out:3
0~ p:-7
0~ pcs:-6
0~ people:-7
0~ per:-4
0~ percent:6
0~ piec:-6
0~ please:9
0~ plus:1
0~ pour:-6
0~ pupil:-2
0~ right:-3
0~ scal:-8
0~ she:-1
0~ silicone:-2
0~ since:5
0~ slic:-5
0~ small:-5
0~ so:-7
0~ spoon:2
0~ still:-9
0~ superfat:7
0~ that:-2
0~ thats:2
0~ the:4
0~ then:4
0~ there:1
0~ thing:-7
0~ this:3
0~ times:-2
0~ tins:-3
0~ to:3
0~ towel:-7
0~ until:-7
0~ w:7
0~ was:-3
0~ weigh:-4
0~ went:3
0~ were:1
0~ when:4
0~ which:-3
0~ winter:-6
0~ with:-8
0~ x:1
0~ zap:-6
0~ ×:-7
0~0:-3
0~A:-5
0~F:-3
0~L:-1
0~S:2
0~W:-3
0~X:5
0~b:-11
0~t:-5
0~w:-3
<%:1
<0:-2
<:3
<<:-4
<=:-5
<>:-3
<A:6
<C:2
<F:2
<I:-8
<K:8
<L:4
<N:-3
<S:-2
<W:-4
<X:2
<d:-4
<l:-8
<v:-3
<w:-2
<~ +:-3
<~ and:4
<~ i:-6
<~ in:-1
<~ less:-4
<~ more:9
<~ of:2
<~ short:3
<~ so:-1
<~ the:5
<~A:-1
<~C:2
<~F:3
<~I:-5
<~L:-4
<~S:-3
<~W:-6
<~X:-7
=%:-12
=0:6
=:-4
=<:-4
==:-3
=>:-2
=A:-3
=F:-4
=I:-3
=K:-1
=L:-1
=N:4
=S:-1
=W:-2
=X:-1
=b:-4
=d:-2
=e:-2
=r:-5
=t:-3
=v:-7
=w:-4
=~ +:-5
=~ ::4
=~ =:-8
=~ after:-1
=~ and:-7
=~ as:2
=~ at:-4
=~ bag:-8
=~ block:-7
=~ check:-2
=~ clean:-3
=~ cold:-1
=~ did:-1
=~ dissolv:-6
=~ does:-2
=~ for:-5
=~ free:-7
=~ from:-3
=~ goes:-3
=~ good:-1
=~ i:-8
=~ im:-7
=~ in:-3
=~ into:-5
=~ it:-6
=~ its:1
=~ melt:-5
=~ mk:-5
=~ my:1
=~ no:-4
=~ not:-12
=~ of:-3
=~ ok:-2
=~ on:-3
=~ so:-5
=~ superfat:-8
=~ that:-7
=~ then:-4
=~ too:-3
=~ with:4
=~%:-6
=~0:6
=~<:-5
=~=:-2
=~A:-3
=~F:-3
=~L:-3
=~W:-3
=~X:-2
=~t:-1
>%:-2
>0:-8
>:-3
><:-3
>=:-2
>>:-5
>A:-2
>F:-1
>K:-6
>L:1
>W:-5
>e:-12
>l:-5
>t:-2
>w:-4
>~ i:-6
>~ in:-2
>~ is:-5
>~ of:-4
>~ oils:-1
>~ so:-5
>~ the:-7
>~A:-2
>~F:3
>~L:-2
>~W:-4
A%:5
A0:5
A=:-3
AA:2
AB:4
AC:-8
AF:4
AI:-7
AL:2
AN:-7
AS:-3
AW:-2
AX:-1
Ad:1
Ae:2
Al:-8
Ar:-7
At:-5
Aw:-4
A~ +:-3
A~ ::5
A~ =:1
A~ ?:-5
A~ a:-7
A~ about:-4
A~ all:2
A~ alright:-5
A~ and:-3
A~ as:9
A~ at:1
A~ bag:1
A~ be:-2
A~ because:-2
A~ before:-6
A~ but:-3
A~ by:-1
A~ came:-6
A~ can:-1
A~ check:-8
A~ comes:4
A~ cool:2
A~ correct:-9
A~ dissolv:-2
A~ does:-6
A~ down:3
A~ figure:4
A~ fine:-3
A~ first:-1
A~ fit:-6
A~ fits:-5
A~ from:6
A~ g:-8
A~ gets:-6
A~ goes:-9
A~ good:-8
A~ got:7
A~ had:2
A~ half:-7
A~ has:5
A~ heavy:2
A~ here:5
A~ i:5
A~ if:4
A~ into:-5
A~ is:5
A~ it:5
A~ its:6
A~ jug:-4
A~ left:-5
A~ like:-4
A~ look:2
A~ looks:-4
A~ no:-7
A~ not:5
A~ of:1
A~ ok:-7
A~ okay:-4
A~ on:-7
A~ one:-7
A~ only:2
A~ or:-4
A~ over:-10
A~ paste:2
A~ please:-8
A~ pls:-3
A~ pot:5
A~ ready:-5
A~ real:-8
A~ right:-5
A~ row:-3
A~ sensible:-5
A~ she:-8
A~ slow:-5
A~ so:3
A~ soap:-3
A~ sprinkl:-3
A~ still:-8
A~ that:-9
A~ the:-4
A~ then:-2
A~ there:1
A~ to:-2
A~ too:-9
A~ tub:4
A~ up:6
A~ was:-1
A~ weigh:7
A~ went:2
A~ when:1
A~ where:4
A~ which:-1
A~ wrong:-5
A~ you:4
A~%:-6
A~0:1
A~<:2
A~=:-2
A~>:-5
A~A:-4
A~F:-3
A~L:3
A~W:-1
A~d:-3
A~e:-2
A~r:-7
A~t:4
A~v:-2
B0:-4
B:3
BF:4
B~ and:-9
B~ so:-6
C%:-6
C:5
C<:1
CA:4
CW:1
Cv:5
C~ at:4
C~ in:6
C~ is:-4
C~%:-6
C~<:-5
F%:2
F0:-1
F:1
F<:4
F=:-3
F>:-1
FA:-2
FB:4
FI:1
FK:-4
FN:6
FS:-10
FT:-3
FU:3
FW:1
FX:1
Fb:1
Fd:-3
Fe:1
Fl:-6
Fr:6
Ft:-4
Fv:-8
Fw:1
F~ +:2
F~ ::2
F~ =:1
F~ ?:-6
F~ a:1
F~ about:-1
F~ add:3
F~ after:3
F~ again:2
F~ all:1
F~ alone:-4
F~ altogether:-2
F~ are:3
F~ as:5
F~ at:3
F~ back:5
F~ bar:-6
F~ bars:-11
F~ batch:-7
F~ because:6
F~ beef:-4
F~ before:-3
F~ block:-2
F~ bottle:-6
F~ but:-3
F~ came:1
F~ can:-5
F~ clean:-3
F~ cold:-6
F~ comes:-9
F~ could:3
F~ count:-8
F~ does:-6
F~ down:7
F~ extra:6
F~ figure:3
F~ fills:-8
F~ first:-6
F~ for:-3
F~ free:-7
F~ from:-4
F~ g:-6
F~ gent:-5
F~ gives:-8
F~ go:-4
F~ goes:-10
F~ gone:-2
F~ got:8
F~ grams:-6
F~ had:-2
F~ half:-3
F~ has:-6
F~ here:4
F~ i'd:4
F~ i:2
F~ if:-6
F~ im:9
F~ in:2
F~ instead:4
F~ into:-3
F~ it:5
F~ its:1
F~ ive:9
F~ jar:-3
F~ jug:3
F~ keeps:-6
F~ l:-3
F~ last:-9
F~ left:-1
F~ like:2
F~ line:8
F~ look:3
F~ looks:-3
F~ makes:-5
F~ melt:-10
F~ melts:-6
F~ my:3
F~ n:3
F~ never:10
F~ next:-7
F~ no:-7
F~ not:3
F~ of:-1
F~ on:-4
F~ once:-5
F~ one:-12
F~ op:1
F~ or:-8
F~ out:3
F~ over:-5
F~ oyl:-4
F~ packet:8
F~ paste:-6
F~ plus:1
F~ ran:2
F~ read:1
F~ real:-6
F~ render:-6
F~ right:-5
F~ rspo:-7
F~ says:-5
F~ second:-1
F~ sets:-2
F~ should:2
F~ since:1
F~ smell:-10
F~ so:4
F~ soap:-5
F~ soaps:-6
F~ stand:-5
F~ stay:9
F~ stays:-2
F~ still:2
F~ stirr:-3
F~ strain:4
F~ stuck:2
F~ takes:-8
F~ than:1
F~ that:-6
F~ thats:3
F~ the:-3
F~ then:-1
F~ there:3
F~ thicken:-7
F~ this:-2
F~ through:-1
F~ tin:-2
F~ to:4
F~ together:2
F~ too:-7
F~ trac:-7
F~ tub:-4
F~ turn:6
F~ twice:3
F~ until:6
F~ up:2
F~ used:-4
F~ w:3
F~ warm:-5
F~ was:-1
F~ weigh:-5
F~ well:2
F~ went:-2
F~ were:-2
F~ when:1
F~ which:-2
F~ while:3
F~ will:-6
F~ with:-1
F~ would:2
F~ wouldnt:-1
F~ you:5
F~%:1
F~0:4
F~<:2
F~=:-2
F~>:-1
F~A:-4
F~F:-3
F~N:7
F~W:-1
F~d:-4
F~e:-1
F~t:-8
I0:3
I:2
I<:1
IA:-2
II:1
IL:4
Ib:-5
Id:5
Iw:-5
I~ +:-3
I~ ::2
I~ and:-1
I~ bath:-1
I~ first:-6
I~ had:8
I~ in:-10
I~ is:-1
I~ it:7
I~ round:-7
I~ so:-6
I~ tray:1
I~ was:5
I~<:1
K%:-7
K0:-11
K:2
K<:1
K=:-1
K>:-6
KA:-6
KF:-8
KL:-3
KW:-4
Kd:-4
Kr:3
Kt:-2
K~ ::-6
K~ and:-2
K~ g:-7
K~ in:-4
K~ into:3
K~ is:3
K~ mixed:3
K~ my:-9
K~ of:-6
K~ on:5
K~ was:-3
K~%:-8
K~>:-6
K~A:-2
K~r:2
L:1
L<:-5
L>:3
LA:-5
LI:5
LL:3
LN:3
LS:6
LU:-4
LW:3
LX:-2
Le:2
Ll:-5
Lt:-2
Lv:-5
Lw:-1
L~ ::-10
L~ after:-1
L~ and:-2
L~ bar:-7
L~ bars:-4
L~ batch:-7
L~ because:1
L~ boil:3
L~ by:-2
L~ flat:4
L~ for:-1
L~ from:10
L~ frozen:-8
L~ goes:-7
L~ i:-1
L~ in:-1
L~ instead:-10
L~ it:1
L~ no:-9
L~ of:6
L~ on:4
L~ out:6
L~ over:2
L~ pot:-7
L~ same:7
L~ so:2
L~ soap:-7
L~ stage:-3
L~ straight:-1
L~ thaw:-5
L~ the:5
L~ to:3
L~ towel:2
L~ was:5
L~ went:4
L~ which:7
L~ with:4
L~0:-1
L~=:-1
L~>:-2
L~X:-6
L~b:9
L~l:-10
L~t:-3
L~w:2
M0:2
M:3
MA:3
M~ and:-5
M~ in:5
M~ is:1
M~ soap:-8
M~ was:1
N0:4
N:9
N<:-2
NA:-4
NL:3
NN:-2
Nb:4
Nl:2
Nt:-9
Nw:4
N~ after:-1
N~ and:-9
N~ as:1
N~ at:-1
N~ because:3
N~ for:-1
N~ from:9
N~ i:7
N~ if:2
N~ instead:-2
N~ is:-1
N~ it:10
N~ or:-7
N~ same:6
N~ since:5
N~ that:-2
N~ the:6
N~ to:4
N~ was:-7
N~ where:8
N~ which:1
N~ would:-8
N~N:-1
S%:-7
S0:-6
S:-5
S<:-4
SF:-2
SL:-5
SN:8
SS:-5
SX:-4
Sd:-1
St:-6
Sv:-4
Sw:-4
S~ ::-4
S~ a:-7
S~ and:4
S~ as:-2
S~ at:-6
S~ because:3
S~ blend:-3
S~ fades:-5
S~ for:-6
S~ from:-6
S~ goes:-4
S~ i:-7
S~ is:5
S~ leav:-7
S~ no:-2
S~ once:-2
S~ only:1
S~ pour:-1
S~ powder:-4
S~ smell:-5
S~ spots:-6
S~ the:-5
S~ then:-3
S~ was:1
S~ when:-5
S~ which:-5
S~0:-4
S~<:-4
S~S:-4
S~w:-5
T0:-3
T:-8
T~ of:-5
T~ oils:-3
U:5
UF:2
Ut:-3
U~ and:-1
U~ i:-7
U~ in:3
U~ stage:-3
W%:-7
W0:7
W:1
W<:5
W=:-3
W>:-4
WC:-1
WF:-4
WI:-3
WL:6
WS:-3
WW:2
WX:2
Wb:2
Wd:-4
We:-3
Wl:-1
Wv:-6
Ww:-1
W~ +:-2
W~ =:-8
W~ ?:-10
W~ a:5
W~ after:-4
W~ all:-3
W~ and:-2
W~ as:3
W~ at:4
W~ because:4
W~ before:3
W~ boil:-2
W~ by:-1
W~ clear:-6
W~ does:-5
W~ down:4
W~ first:-5
W~ for:-6
W~ from:-6
W~ g:-8
W~ got:-4
W~ here:-5
W~ i:8
W~ in:-1
W~ into:-9
W~ is:2
W~ it:1
W~ let:-4
W~ makes:-8
W~ never:-5
W~ on:-8
W~ or:6
W~ out:-8
W~ outdoor:-1
W~ outside:-1
W~ since:2
W~ so:-2
W~ that:-6
W~ the:1
W~ then:-1
W~ to:-9
W~ too:8
W~ wait:-1
W~ was:9
W~ went:3
W~ when:6
W~ which:3
W~ with:1
W~ would:-5
W~0:2
W~<:1
W~=:-3
W~A:-5
W~e:-2
W~r:-6
W~t:-2
W~v:-3
X%:3
X0:1
X:-2
X<:1
X=:-6
X>:-1
XA:-5
XC:-7
XF:-3
XL:4
XN:9
XS:-2
XW:1
XX:-2
Xb:1
Xl:3
Xt:-5
Xv:-4
Xw:-1
X~ ::-2
X~ ?:-4
X~ a:-6
X~ and:1
X~ at:-7
X~ bar:3
X~ bars:-7
X~ came:-3
X~ dissolv:-10
X~ fine:-4
X~ for:1
X~ from:-9
X~ ground:-7
X~ i:6
X~ is:-5
X~ it:-7
X~ makes:-2
X~ no:-6
X~ of:-10
X~ on:-2
X~ so:-4
X~ the:-4
X~ this:3
X~ to:-9
X~ was:2
X~ went:1
X~0:3
X~<:-4
X~L:2
X~W:-4
X~v:-3
X~w:-5
^ *:-6
^ ::3
^ =:-5
^ about:13
^ add:1
^ added:9
^ after:2
^ all:3
^ also:-5
^ alway:3
^ am:-5
^ an:5
^ and:-8
^ answer:-1
^ any:-7
^ anyone:-8
^ anyth:-3
^ are:-4
^ as:4
^ ask:-9
^ at:-1
^ attempt:-5
^ b:-7
^ back:-7
^ bar:-5
^ bars:-8
^ basic:-4
^ batch:-8
^ be:-8
^ because:-1
^ been:-6
^ before:-8
^ between:7
^ big:-8
^ bit:3
^ blend:-8
^ blender:-7
^ blue:-5
^ boil:3
^ bonsoir:-4
^ both:-8
^ bottle:10
^ bought:-8
^ box:-4
^ bring:-3
^ bubbl:-7
^ but:-1
^ by:-4
^ c:-5
^ came:2
^ can:-1
^ cant:-1
^ castile:-7
^ chang:3
^ check:-9
^ christma:-3
^ clear:1
^ cold:-4
^ combine:-3
^ cook:-3
^ cool:-3
^ copi:-3
^ correct:1
^ correction:9
^ cost:-10
^ could:-2
^ couldnt:7
^ cover:-6
^ crock:-3
^ crockpot:-5
^ cure:-4
^ cured:-5
^ cut:-3
^ d:-5
^ dad:2
^ dads:-5
^ date:-2
^ day:-10
^ dear:2
^ did:-2
^ didnt:3
^ dissolv:-4
^ dissolve:-1
^ do:-3
^ does:-3
^ dog:4
^ done:-4
^ dont:-11
^ doubl:2
^ dropp:-1
^ e:-4
^ each:1
^ earlier:-7
^ edit:1
^ enough:-7
^ entry:2
^ even:-1
^ every:2
^ everyone:-6
^ everyth:4
^ export:-4
^ f:-6
^ fat:-7
^ fats:-11
^ fill:-5
^ fills:-3
^ fine:-3
^ first:-2
^ for:4
^ forgot:-2
^ found:8
^ freeze:-6
^ from:-3
^ g:-6
^ gave:-5
^ gel:-7
^ give:-7
^ glov:-3
^ goat:-6
^ goes:-4
^ goggl:-6
^ going:1
^ gonna:5
^ good:-4
^ got:-8
^ grams:-6
^ gran:1
^ grandad:-1
^ grandma:-4
^ grandpa:2
^ granny:-5
^ grans:-1
^ grat:-6
^ greeting:-5
^ had:3
^ half:2
^ hallo:-2
^ hand:2
^ handout:-3
^ hard:-5
^ has:-4
^ have:-5
^ he:-10
^ heat:-6
^ hello:-3
^ help:5
^ here:-8
^ heres:-7
^ hes:-6
^ hey:-6
^ hiya:2
^ hola:-3
^ hope:-2
^ hot:1
^ how:-10
^ hp:-4
^ hubby:3
^ i'd:4
^ i:-2
^ if:-10
^ ignore:2
^ im:3
^ in:-6
^ ingredient:-3
^ instead:8
^ into:-3
^ is:-6
^ it:3
^ item:-3
^ itll:-2
^ its:-4
^ ive:-7
^ jug:6
^ just:1
^ keep:4
^ kept:1
^ kids:-8
^ kind:1
^ kitchen:1
^ knock:1
^ label:-10
^ last:-5
^ lather:-4
^ laundry:-5
^ leave:-2
^ left:-2
^ leftover:-9
^ lid:1
^ like:-2
^ line:-4
^ liquid:-5
^ list:-7
^ log:-5
^ lol:-5
^ long:-3
^ look:-5
^ looks:-3
^ lost:-7
^ lot:-6
^ love:-4
^ lye's:7
^ m:-4
^ made:4
^ make:6
^ makes:-3
^ many:-3
^ market:-6
^ meanwhile:-1
^ measur:-1
^ melt:-1
^ method:1
^ mine:-6
^ mines:3
^ mix:-7
^ mixed:-3
^ mold:-7
^ morn:-6
^ mould:-6
^ mum:-6
^ mums:5
^ must:-4
^ my:-2
^ n:-9
^ name:-3
^ nb:2
^ need:-5
^ neighbour:1
^ never:-4
^ new:-1
^ next:-10
^ nice:-6
^ no:5
^ nobody:-3
^ none:-6
^ normal:1
^ notebook:-5
^ notes:-1
^ noth:-12
^ now:-1
^ number:-2
^ o:-5
^ oat:-4
^ oil:-7
^ oils:-3
^ ok:-3
^ okay:-4
^ old:-4
^ on:-7
^ once:-2
^ one:1
^ only:1
^ or:-4
^ other:-4
^ our:-4
^ ours:-5
^ out:1
^ outside:-6
^ oven:-3
^ page:-4
^ paid:-1
^ passt:-3
^ past:-4
^ paste:1
^ people:-4
^ per:1
^ ph:-5
^ phase:-3
^ phone:-3
^ photo:-9
^ plain:-3
^ plan:-4
^ plann:-7
^ please:2
^ pls:-7
^ plus:3
^ post:5
^ pot:7
^ prep:-2
^ press:-3
^ pretty:2
^ ps:5
^ pull:5
^ purity:8
^ put:-5
^ q:-3
^ question:-7
^ quick:-4
^ rain:4
^ ran:4
^ re:-2
^ read:4
^ reader:2
^ ready:-5
^ recipe:-5
^ remark:-7
^ render:-3
^ replac:-1
^ rest:-3
^ result:-5
^ right:-6
^ room:-5
^ safe:-5
^ same:1
^ sat:-5
^ scal:3
^ scale:7
^ scoop:-4
^ scrap:3
^ second:2
^ sells:-3
^ set:-4
^ sf:-2
^ shav:-3
^ shave:-3
^ she:-5
^ shes:-3
^ should:-5
^ since:3
^ sis:2
^ slow:-3
^ smell:-8
^ snow:2
^ so:-4
^ soap:-7
^ soft:-4
^ sold:-7
^ some:2
^ somebody:-1
^ someone:-3
^ somewhere:2
^ sorry:-1
^ sound:-3
^ source:5
^ spill:-2
^ split:1
^ spoon:-3
^ sry:-5
^ stamp:-6
^ start:-7
^ stick:-4
^ still:-2
^ stir:-3
^ stirr:-4
^ strain:3
^ student:3
^ subject:-3
^ sum:-4
^ sunday:-7
^ superfat:2
^ swap:3
^ swapp:3
^ swirl:-7
^ switch:-5
^ take:-2
^ tare:1
^ teacher:1
^ tell:-9
^ test:-6
^ text:-6
^ thank:-6
^ thats:-3
^ the:-2
^ then:-5
^ ther:-7
^ there:-1
^ these:-1
^ they:-9
^ third:-2
^ this:1
^ those:2
^ thought:-2
^ threw:8
^ thx:-4
^ tip:-6
^ title:-4
^ today:2
^ tonight:-5
^ too:-2
^ took:3
^ total:-5
^ towel:-3
^ trac:-2
^ trace:-4
^ translat:-3
^ tried:-4
^ try:-4
^ tub:-6
^ turn:-2
^ unit:-3
^ unmould:-5
^ update:2
^ used:4
^ using:-7
^ version:-11
^ very:-7
^ wait:4
^ want:3
^ warm:-6
^ was:-3
^ wash:-7
^ we:1
^ wed:1
^ weigh:-6
^ weight:-9
^ well:-5
^ went:2
^ weve:-6
^ what:-9
^ whats:-11
^ when:-7
^ which:-8
^ while:-2
^ who:-5
^ whoever:-4
^ whole:5
^ whos:-3
^ why:-8
^ will:-4
^ with:-4
^ worksheet:-3
^ workshop:-3
^ would:-2
^ wrapp:-8
^ write:2
^ written:3
^ wrote:-3
^ x:-9
^ years:4
^ yes:-10
^ yesterday:-7
^ yield:1
^ you:-7
^ youll:2
^ zap:-3
^%:-6
^0:-5
^<:-2
^=:-6
^>:-11
^A:1
^C:-12
^I:-2
^K:-3
^M:2
^S:-9
^T:-6
^U:1
^X:-4
^b:1
^d:-3
^e:-10
^l:6
^r:4
^v:-1
^w:-2
any:-2
b%:-3
b0:3
b:2
bA:1
bF:-6
bL:8
bN:5
bW:10
bb:-7
bt:-5
bw:-1
b~ ::-1
b~ ?:8
b~ a:-5
b~ after:-7
b~ and:-6
b~ as:-4
b~ bars:-7
b~ because:-2
b~ before:-7
b~ but:7
b~ by:7
b~ for:7
b~ i:3
b~ if:5
b~ is:7
b~ it:3
b~ my:3
b~ not:-5
b~ of:1
b~ on:-4
b~ or:7
b~ right:-8
b~ still:4
b~ the:4
b~ then:6
b~ too:1
b~ was:5
b~ x:-7
b~0:-9
b~L:1
d%:-4
d0:-7
d:-6
d=:-4
dA:-6
dF:-8
dI:-7
dK:-5
dL:-5
dS:-1
db:-4
dd:-5
dt:-2
dv:-1
d~ ::-1
d~ ?:-4
d~ and:-5
d~ at:-3
d~ blend:-1
d~ both:-2
d~ by:-5
d~ for:-5
d~ here:-2
d~ in:-4
d~ into:-1
d~ it:-6
d~ no:-4
d~ oils:-2
d~ or:-2
d~ pour:-2
d~ so:-7
d~ stirr:-1
d~ the:-6
d~ then:-6
d~ trace:-1
d~ when:-7
d~A:-6
e%:-6
e0:4
e:3
e=:-2
e>:-5
eA:-2
eF:-1
eL:1
eN:9
eW:-3
eX:4
eb:-1
ee:-6
et:4
e~ +:6
e~ all:1
e~ and:-3
e~ as:3
e~ but:11
e~ for:-1
e~ g:-9
e~ grams:-5
e~ in:9
e~ is:6
e~ minus:7
e~ of:3
e~ on:-3
e~ or:9
e~ was:11
e~ with:11
e~A:-4
e~F:-4
e~W:-3
l%:-5
l0:3
l:-3
l=:-5
l>:-4
lA:1
lF:-8
lL:-1
lN:3
lW:-5
lX:-4
ll:-4
long:1
lv:-8
lw:-4
l~ and:-6
l~ as:-8
l~ for:1
l~ i:-8
l~ in:-8
l~ is:-2
l~ of:-4
l~ on:1
l~ right:-1
l~ the:-7
l~ was:-7
l~ went:2
l~ with:1
l~L:2
l~t:-5
no figure:-6
no name:-6
r%:-6
r0:3
r:2
r>:-5
rA:1
rF:9
rK:2
rW:-3
rt:-7
r~ as:-11
r~ by:3
r~K:2
short:-7
t%:-5
t0:-3
t:-5
t<:6
t=:-3
t>:5
tA:-2
tF:-2
tK:-3
tL:-4
tN:-3
tS:-2
tU:-6
tX:-6
tb:-2
td:-1
te:-10
tl:-7
tt:-2
tw:-3
t~ ::3
t~ ?:-7
t~ a:-5
t~ add:-2
t~ added:2
t~ after:-6
t~ ago:-7
t~ all:-6
t~ and:-2
t~ at:-4
t~ because:-8
t~ before:3
t~ blend:-3
t~ both:-3
t~ but:2
t~ by:-5
t~ cook:-2
t~ cover:-2
t~ cure:-1
t~ cut:-1
t~ day:-1
t~ did:-4
t~ edges:-4
t~ flat:-7
t~ from:-7
t~ gel:-3
t~ i:-4
t~ if:-5
t~ in:-10
t~ into:-2
t~ is:-6
t~ it:-6
t~ its:1
t~ ive:-5
t~ later:-9
t~ lid:-6
t~ lined:-1
t~ loaf:-2
t~ long:-2
t~ makes:-1
t~ mash:-2
t~ melt:5
t~ mine:-7
t~ mix:-5
t~ mould:-2
t~ my:-4
t~ no:-3
t~ now:-7
t~ of:2
t~ off:-3
t~ oils:-2
t~ old:3
t~ on:-7
t~ or:-4
t~ paste:-8
t~ pot:3
t~ pour:-4
t~ ready:-5
t~ rest:-8
t~ since:-5
t~ so:-2
t~ still:-6
t~ stir:-2
t~ stirr:-5
t~ the:-5
t~ then:-6
t~ they:-2
t~ till:-4
t~ to:-5
t~ trace:-5
t~ under:-1
t~ unmould:-3
t~ until:-5
t~ used:-2
t~ wait:-2
t~ was:-9
t~ we:-7
t~ weigh:-2
t~ when:-5
t~ which:-2
t~ with:2
t~ zap:-1
t~0:-1
t~=:-2
t~A:-4
t~F:-5
t~K:-2
t~L:-2
t~S:-1
t~U:-4
t~W:1
t~X:-7
t~b:-6
t~d:-2
t~t:-5
v0:-5
v=:1
vA:3
vC:1
vF:-3
vK:7
vL:3
vN:9
vS:-3
vW:7
vX:-4
vb:-2
vd:-1
vl:-7
vt:3
vv:-1
vw:1
v~ a:-5
v~ and:-5
v~ at:-4
v~ bottle:-2
v~ can:-10
v~ for:-4
v~ i:2
v~ in:-3
v~ is:-8
v~ of:2
v~ one:-4
v~ or:-3
v~ pot:-9
v~ so:-2
v~ to:5
v~C:3
v~S:-1
v~W:2
v~X:-2
w%:-4
w0:1
w:-1
w<:-14
w=:-7
w>:3
wA:-2
wC:6
wI:-4
wL:-1
wN:2
wS:-6
wW:-2
wX:1
wb:1
wd:4
wl:-11
wt:-11
wv:-1
ww:1
w~ a:2
w~ after:-6
w~ and:-1
w~ as:-6
w~ at:-6
w~ cubes:-6
w~ dissolv:2
w~ empty:-1
w~ for:-1
w~ fresh:-7
w~ from:-8
w~ goes:-8
w~ in:-5
w~ instead:-12
w~ is:-1
w~ it:1
w~ loaf:-3
w~ more:-3
w~ mould:3
w~ no:-1
w~ of:2
w~ on:-3
w~ one:-2
w~ or:-2
w~ out:-7
w~ per:2
w~ so:-3
w~ steps:-1
w~ the:-7
w~ to:-5
w~ together:-9
w~ too:2
w~ was:5
w~ wet:-6
w~ when:-1
w~0:3
w~C:3
w~I:3
w~L:-9
w~N:-1
w~S:-4
w~X:-5
w~w:-3`;
